/** What this browser remembers of how the program looks. Where it gives no storage, what is set lasts as long as the page. */
export function remembered(name: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(`batterboard.${name}`) ?? "null");
  } catch {
    return null;
  }
}

export function remember(name: string, value: unknown): void {
  try {
    localStorage.setItem(`batterboard.${name}`, JSON.stringify(value));
  } catch {
    // Refused or full: nothing of the build is lost by it.
  }
}
