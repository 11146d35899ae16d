const tables: readonly (readonly [RegExp, string])[] = [
  [
    /^America\/(New_York|Chicago|Denver|Los_Angeles|Phoenix|Detroit|Boise|Anchorage|Juneau|Indiana\/.+|Kentucky\/.+)$|^Pacific\/Honolulu$/,
    "us-federal",
  ],
  [/^America\/(Toronto|Vancouver|Edmonton|Winnipeg|Halifax|Regina|Moncton|St_Johns)$/, "ca"],
  [/^Europe\/London$/, "gb-england"],
  [/^Europe\/Dublin$/, "ie"],
  [/^Europe\/(Berlin|Busingen)$/, "de"],
  [/^Europe\/Paris$/, "fr"],
  [/^Australia\//, "au"],
  [/^Pacific\/Auckland$/, "nz"],
];

/** The holidays that offices and yards keep where the site is, by its time zone: a guess that the builder changes under Site. Nothing where no table fits. */
export function holidaysAt(document: unknown): { readonly holidays?: string } {
  const zone = (document as { readonly site?: { readonly zone?: unknown } } | null)?.site?.zone;
  const table = typeof zone === "string" ? tables.find(([zones]) => zones.test(zone))?.[1] : undefined;
  return table === undefined ? {} : { holidays: table };
}
