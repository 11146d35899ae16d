const words = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

/** "ten weekends", "one week", "14 weekends": the name of the scale by what is in sight. */
export function counted(count: number, what: "weekends" | "weeks"): string {
  return `${words[count - 1] ?? count} ${count === 1 ? what.slice(0, -1) : what}`;
}
