/** "97 of 100": over a hundred is never rounded down to it, and a hundred never up to more. */
export function ofHundred(of100: number): string {
  const whole = of100 > 100 ? Math.max(101, Math.round(of100)) : Math.round(of100);
  return `${whole} of 100`;
}
