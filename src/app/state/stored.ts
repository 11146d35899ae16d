/** What this browser remembers of how the program looks. Where it gives no storage, what is set lasts as long as the page. */
export const remembered = (name: string): unknown => get(() => localStorage, name);

/** Null forgets it. */
export const remember = (name: string, value: unknown): void => put(() => localStorage, name, value);

/** The same for this one tab: a reload finds it, another tab does not. */
export const rememberedHere = (name: string): unknown => get(() => sessionStorage, name);
export const rememberHere = (name: string, value: unknown): void => put(() => sessionStorage, name, value);

// Where storage is refused, already asking for it throws.
function get(storage: () => Storage, name: string): unknown {
  try {
    return JSON.parse(storage().getItem(`batterboard.${name}`) ?? "null");
  } catch {
    return null;
  }
}

function put(storage: () => Storage, name: string, value: unknown): void {
  try {
    if (value === null) storage().removeItem(`batterboard.${name}`);
    else storage().setItem(`batterboard.${name}`, JSON.stringify(value));
  } catch {
    // Refused or full: nothing of the build is lost by it.
  }
}
