import type { Entered } from "./filled";

/** What was entered in forms that are closed, by build, kit and part; for as long as the page is open. Nothing of it is in the build. */
export const drafts = new Map<string, { readonly entered: Entered; readonly name: string }>();
