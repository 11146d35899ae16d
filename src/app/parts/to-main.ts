/** Gives the keyboard to the view as a whole where what had it is gone, so that the next key does not begin at the top of the page. */
export function toMain(): void {
  document.getElementById("main")?.focus({ preventScroll: true });
}
