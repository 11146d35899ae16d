import {
  type AciPour_us,
  chemistryCoefficient,
  ciriaC2,
  columnFormula_si,
  columnFormula_us,
  pressureAci_si,
  pressureAci_us,
  pressureCiria,
  pressureDin,
  settingFactor_din,
  temperatureFactor_ciria,
  wallFormula_si,
  wallFormula_us,
  weightCoefficient_si,
  weightCoefficient_us,
} from "../../../src/core/concrete";
import { table, value } from "../published";

const plain: AciPour_us = {
  shape: "wall",
  height_ft: 10,
  rise_ft_h: 5,
  concrete_F: 70,
  weight_pcf: 150,
  chemistry: 1,
  slump_in: 4,
  vibrated_ft: 4,
  external: false,
  fromBase: false,
};
const us = (change: Partial<AciPour_us>) => () => value(pressureAci_us({ ...plain, ...change })).most_psf;
const zone = (change: Partial<AciPour_us>) => () => value(pressureAci_us({ ...plain, ...change })).hydrostatic_ft;
const column = (height_ft: number, rise_ft_h: number, concrete_F = 70) => us({ shape: "column", height_ft, rise_ft_h, concrete_F });
const wall = (height_ft: number, rise_ft_h: number, concrete_F: number) => us({ height_ft, rise_ft_h, concrete_F });

const floorTable: Record<number, readonly number[]> = {
  1: [600, 600, 600, 600, 600, 600],
  2: [600, 600, 600, 600, 600, 600],
  3: [600, 600, 600, 600, 690, 825],
  4: [600, 600, 664, 750, 870, 1050],
  5: [650, 712, 793, 900, 1050, 1275],
  6: [750, 825, 921, 1050, 1230, 1500],
  7: [850, 938, 1050, 1200, 1410, 1725],
};
const fastTable: Record<number, readonly number[]> = {
  8: [881, 972, 1090, 1247, 1466, 1795],
  9: [912, 1008, 1130, 1293, 1522, 1865],
  10: [943, 1042, 1170, 1340, 1578, 1935],
};
const degrees = [90, 80, 70, 60, 50, 40];
const grid = (rows: Record<number, readonly number[]>, formula: (rise: number, F: number) => number) =>
  Object.entries(rows).flatMap(([rise, figures]) =>
    figures.map(
      (expected, i) =>
        [`R${rise}-T${degrees[i]}`, expected, () => Math.max(600, formula(Number(rise), degrees[i] as number))] as [
          string,
          number,
          () => number,
        ],
    ),
  );

const din = (consistency: Parameters<typeof pressureDin>[0]["consistency"]) => () =>
  value(pressureDin({ consistency, height_m: 8, rise_m_h: 2, setting_h: 5, weight_kN_m3: 25, colder_K: 0 })).most_kPa;

const ciria = (shape: "column" | "wall", form_m: number, rise_m_h: number, concrete_C: number, c2: number) => () =>
  value(pressureCiria({ shape, form_m, height_m: form_m, rise_m_h, concrete_C, weight_kN_m3: 25, c2 }));

export const rows = [
  ...table("aci-us", "ACI 347R-14, worked in a university form design lecture, week 7 and 8", "read", 1, [
    ["wall-15ft-R10-T80", 1042.5, wall(15, 10, 80)],
    ["column-10ft-fast", 1500, column(10, 60)],
  ]),
  ...table("aci-us", "wall form design example in the manner of SP-4 (4 in slump, Type I)", "read", 1, [
    ["wall-14ft-R3-T60", 600, wall(14, 3, 60)],
    ["wall-14ft-R3-T60-zone-ft", 4, zone({ height_ft: 14, rise_ft_h: 3, concrete_F: 60 }), 0.01],
  ]),
  ...table("aci-us", "ACI 347R-14 4.2.2.1a, from its formulas", "computed", 1, [
    ["column-6ft-R10-T70", 900, column(6, 10)],
    ["column-6ft-R5-T70", 792.9, column(6, 5)],
    ["column-6ft-R3-T60", 600, column(6, 3, 60)],
    ["wall-16ft-R5-T50", 1298, wall(16, 5, 50)],
    ["wall-12ft-R16", 1800, wall(12, 16, 70)],
    ["wall-3ft-R3-T60", 450, wall(3, 3, 60)],
    ["wall-12ft-R4-T60-Cc1.4", 1050, us({ height_ft: 12, rise_ft_h: 4, concrete_F: 60, chemistry: 1.4 })],
    ["full-head-from-R-at-50F", 900, column(6, 50 / 12, 50)],
    ["full-head-from-R-at-70F", 900, column(6, 70 / 12, 70)],
    ["full-head-from-R-at-90F", 900, column(6, 90 / 12, 90)],
    ["R5-differs-in-the-lowest-in", 8.5, () => 12 * (6 - zone({ shape: "column", height_ft: 6, rise_ft_h: 5 })()), 0.1],
    ["pause-earns-nothing", 900, column(6, 6.3)],
    ["formula-b-at-6.3", 962, () => columnFormula_us(6.3, 69.8), 2],
  ]),
  ...table("aci-us/Cw", "ACI 347-04 Table 2.1", "read-2nd", 0.00005, [
    ["115pcf", 0.8966, () => weightCoefficient_us(115)],
    ["120pcf", 0.9138, () => weightCoefficient_us(120)],
    ["130pcf", 0.9483, () => weightCoefficient_us(130)],
    ["160pcf", 1.1034, () => weightCoefficient_us(160)],
    ["150pcf", 1, () => weightCoefficient_us(150)],
    ["not-under", 0.8, () => weightCoefficient_us(80)],
    ["140pcf", 1, () => weightCoefficient_us(140)],
    ["just-under-140pcf", 0.9827, () => weightCoefficient_us(139.98)],
  ]),
  ...table("aci-us/Cc", "ACI 347-04 Table 2.2", "read-2nd", 0, [
    ["plain", 1, () => chemistryCoefficient("plain", false)],
    ["plain-retarder", 1.2, () => chemistryCoefficient("plain", true)],
    ["blend", 1.2, () => chemistryCoefficient("blend", false)],
    ["blend-retarder", 1.4, () => chemistryCoefficient("blend", true)],
    ["slow-blend", 1.4, () => chemistryCoefficient("slow blend", false)],
    ["slow-blend-retarder", 1.4, () => chemistryCoefficient("slow blend", true)],
  ]),
  ...table("aci-us/b", "ACI 347 formula (b) with the 600 psf floor, Cw = Cc = 1", "computed", 1, grid(floorTable, columnFormula_us)),
  ...table("aci-us/c", "ACI 347 formula (c), Cw = Cc = 1", "computed", 1, grid(fastTable, wallFormula_us)),
  ...table("aci-si", "ACI 347R-14 4.2.2.1 SI", "computed", 0.05, [
    ["b-R2-T15", 55.07, () => columnFormula_si(2, 15), 0.005],
    ["b-R1-T20", 27.97, () => columnFormula_si(1, 20)],
    [
      "b-R1-T20-floor",
      30,
      () =>
        value(
          pressureAci_si({
            shape: "column",
            height_m: 5,
            rise_m_h: 1,
            concrete_C: 20,
            density_kg_m3: 2400,
            chemistry: 1,
            slump_mm: 100,
            vibrated_m: 1,
            external: false,
            fromBase: false,
          }),
        ).most_kPa,
      0.001,
    ],
  ]),
  ...table("aci-si/Cw", "ACI 347-04 Table 2.1 in SI", "read-2nd", 0.00005, [
    ["2000", 0.931, () => weightCoefficient_si(2000), 0.0001],
    ["2239", 0.98254, () => weightCoefficient_si(2239)],
    ["2240", 1, () => weightCoefficient_si(2240)],
    ["2400", 1, () => weightCoefficient_si(2400)],
    ["2500", 1.07759, () => weightCoefficient_si(2500)],
    ["not-under", 0.8, () => weightCoefficient_si(1300)],
  ]),
  ...table("aci-si", "ACI 347R-14 4.2.2.1 SI, formula (c)", "computed", 0.005, [
    ["c-R3-T20", 57.15, () => wallFormula_si(3, 20)],
    ["c-R2.1-T15", 58.07, () => wallFormula_si(2.1, 15)],
  ]),
  ...table("ciria/C2", "CIRIA Report 108, groups partly from memory", "from memory", 0, [
    ["plain", 0.3, () => ciriaC2("plain", false)],
    ["plain-retarder", 0.45, () => ciriaC2("plain", true)],
    ["blend", 0.45, () => ciriaC2("blend", false)],
    ["blend-retarder", 0.6, () => ciriaC2("blend", true)],
    ["slow-blend", 0.6, () => ciriaC2("slow blend", false)],
    ["slow-blend-retarder", 0.6, () => ciriaC2("slow blend", true)],
  ]),
  ...table("ciria", "CIRIA Report 108, an engineering forum's worked sheet", "read", 0.05, [
    ["K-12.5C", 1.5956, () => temperatureFactor_ciria(12.5), 0.0001],
    ["column-R1-H9.05", 86.82, () => ciria("column", 9.05, 1, 12.5, 0.45)().most_kPa],
    ["column-R1-H9.05-zone-m", 3.47, () => ciria("column", 9.05, 1, 12.5, 0.45)().hydrostatic_m, 0.005],
    ["K-25C", 0.771, () => temperatureFactor_ciria(25), 0.001],
    ["wall-R3-H3.3", 53.87, () => ciria("wall", 3.3, 3, 32, 0.6)().most_kPa],
    ["wall-R3-H3.3-zone-m", 2.15, () => ciria("wall", 3.3, 3, 32, 0.6)().hydrostatic_m, 0.006],
    ["K-32C", 0.5625, () => temperatureFactor_ciria(32), 0.0001],
  ]),
  ...table("ciria", "CIRIA Report 108, from its formula", "computed", 0.05, [
    ["wall-R1.5-H5", 41.85, () => ciria("wall", 5, 1.5, 25, 0.3)().most_kPa],
    ["column-1.83-full-head", 45.75, () => ciria("column", 1.83, 3, 15, 0.3)().most_kPa],
  ]),
  ...table("din", "DIN 18218:2010-01, v = 2 m/h, 25 kN/m3, tE = 5 h", "from memory", 0.001, [
    ["F1", 31, din("F1")],
    ["F2", 39, din("F2")],
    ["F3", 46, din("F3")],
    ["F4", 51, din("F4")],
    ["F5", 85, din("F5")],
    ["F6", 101, din("F6")],
    ["SCC", 91, din("SCC")],
  ]),
  ...table("din/K1", "DIN 18218:2010-01, set at 8 h", "from memory", 1e-9, [
    ["F1", 1.09, () => settingFactor_din("F1", 8)],
    ["F2", 1.159, () => settingFactor_din("F2", 8)],
    ["F3", 1.231, () => settingFactor_din("F3", 8)],
    ["F4", 1.42, () => settingFactor_din("F4", 8)],
    ["F5", 1.6, () => settingFactor_din("F5", 8)],
    ["SCC", 1.6, () => settingFactor_din("SCC", 8)],
  ]),
];
