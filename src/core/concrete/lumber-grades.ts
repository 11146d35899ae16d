/** Reference design values of the NDS Supplement (Tables 4A, 4B, 4D), psi. Read in university lectures; what was not seen in print is named. */
export interface Grade {
  readonly name: string;
  readonly bending: number;
  readonly shear: number;
  readonly bearing: number;
  readonly compression: number;
  readonly elasticity: number;
  readonly elasticityMin: number;
  /** Values known only from memory. */
  readonly memory: readonly GradeValue[];
  /** Southern pine: bending and compression are printed for each depth up to so many inches, with the size factor in them. */
  readonly byDepth?: readonly { readonly upTo_in: number; readonly bending: number; readonly compression: number }[];
}

export type GradeValue = "bending" | "shear" | "bearing" | "compression" | "elasticity" | "elasticityMin";

const all: readonly GradeValue[] = ["bending", "shear", "bearing", "compression", "elasticity", "elasticityMin"];

const grade = (name: string, f: readonly number[], memory: readonly GradeValue[] = []): Grade => ({
  name,
  bending: f[0] as number,
  shear: f[1] as number,
  bearing: f[2] as number,
  compression: f[3] as number,
  elasticity: f[4] as number,
  elasticityMin: f[5] as number,
  memory,
});

export const grades: Readonly<Record<string, Grade>> = {
  "DF-L No 2": grade("Douglas fir-larch No 2", [900, 180, 625, 1350, 1.6e6, 580e3], ["compression"]),
  "DF-L No 3": grade("Douglas fir-larch No 3", [525, 180, 625, 775, 1.4e6, 510e3], all),
  "HF Sel": grade("hem-fir select structural", [1400, 150, 405, 1500, 1.6e6, 580e3]),
  "HF No 2": grade("hem-fir No 2", [850, 150, 405, 1300, 1.3e6, 470e3], all),
  "HF No 3": grade("hem-fir No 3", [500, 150, 405, 725, 1.2e6, 440e3], all),
  "DF-S No 2": grade("Douglas fir south No 2", [850, 180, 520, 1350, 1.2e6, 440e3]),
  "SPF No 2": grade("spruce-pine-fir No 2", [875, 135, 425, 1150, 1.4e6, 510e3], all),
  "SPF No 3": grade("spruce-pine-fir No 3", [500, 135, 425, 650, 1.2e6, 440e3], all),
  /** Bending of 2x4 and 2x6, compression and least elasticity at 6 in were read. */
  "SP No 2": {
    ...grade("southern pine No 2", [1100, 175, 565, 1450, 1.4e6, 510e3], ["shear", "bearing", "elasticity", "compression"]),
    byDepth: [
      { upTo_in: 3.5, bending: 1100, compression: 1450 },
      { upTo_in: 5.5, bending: 1000, compression: 1400 },
      { upTo_in: 7.25, bending: 925, compression: 1350 },
      { upTo_in: 9.25, bending: 800, compression: 1300 },
      { upTo_in: 11.25, bending: 750, compression: 1250 },
    ],
  },
};

/** The least of each value over several grades. */
function least(name: string, of: readonly string[]): Grade {
  const among = of.map((key) => grades[key] as Grade);
  return grade(
    name,
    all.map((value) => Math.min(...among.map((g) => g[value]))),
    all,
  );
}

/** The lowest likely grade where none is known: of new lumber the weakest No 2 of the table, of salvaged the weakest No 3 (common practice, no source). */
export const unknownNew = least("No 2, species not known", ["DF-L No 2", "HF No 2", "DF-S No 2", "SPF No 2"]);
export const unknownSalvaged = least("No 3, species not known", ["DF-L No 3", "HF No 3", "SPF No 3"]);

/** Five inches and thicker has a table of its own (4D, posts and timbers No 2), with lower values: the least of its usual species, from memory. */
export const postsAndTimbers = grade("No 2 post or timber", [500, 125, 405, 500, 1.0e6, 370e3], all);
