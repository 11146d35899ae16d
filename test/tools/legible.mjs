// What a reader could not read on a page: text too small, text cut off without saying so, text that lies on other text. Runs in the page.

/** @returns one line for each fault, as seen in the window as it stands. `least`: px below which text is too small. */
export const illegible = (page, least) => page.evaluate(look, least);

function look(least) {
  const faults = [];
  const said = (text) => `“${text.trim().replace(/\s+/g, " ").slice(0, 60)}”`;
  const cuts = (style) => style.overflowX !== "visible" || style.overflowY !== "visible";
  // A dialog or a sheet over the page: only that is read.
  const over = document.querySelector("dialog[open]") ?? document.body;

  /** The part of a box that nothing round it cuts off. */
  function visible(box, element) {
    let [left, top, right, bottom] = [
      Math.max(0, box.left),
      Math.max(0, box.top),
      Math.min(innerWidth, box.right),
      Math.min(innerHeight, box.bottom),
    ];
    for (let at = element; at && at !== document.documentElement; at = at.parentElement) {
      const style = getComputedStyle(at);
      if (cuts(style) && style.display !== "inline") {
        const edge = at.getBoundingClientRect();
        [left, top, right, bottom] = [
          Math.max(left, edge.left),
          Math.max(top, edge.top),
          Math.min(right, edge.right),
          Math.min(bottom, edge.bottom),
        ];
      }
      if (style.position === "fixed") break;
    }
    return { left, top, right, bottom };
  }
  /** Whether the middle of the box is this element's own and not something that lies over it. */
  function onTop(box, element) {
    const there = document.elementFromPoint((box.left + box.right) / 2, (box.top + box.bottom) / 2);
    return there !== null && (element.contains(there) || there.contains(element) || there.closest("svg") === element.closest("svg"));
  }
  /** Whether something with a ground of its own, like a bar at the foot, parts the two where they meet: then one is scrolled under the other. */
  function parted(one, other, x, y) {
    const stack = document.elementsFromPoint(x, y);
    const under = stack.findIndex((at) => at.contains(one) && at.contains(other));
    return stack.slice(0, under < 0 ? undefined : under).some((at) => {
      const opaque = !/rgba\(.*, 0(\.\d+)?\)|transparent/.test(getComputedStyle(at).backgroundColor);
      return opaque && at.contains(one) !== at.contains(other);
    });
  }

  const boxes = [];
  const walker = document.createTreeWalker(over, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    const text = node.textContent ?? "";
    if (!element || text.trim() === "" || element.closest("script, style, title, .unseen, noscript, option")) continue;
    if (!element.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
    const style = getComputedStyle(element);
    // Text of a drawing is as large as the drawing is shown.
    const scale = element instanceof SVGElement ? (element.getScreenCTM?.()?.d ?? 1) : 1;
    const size = Number.parseFloat(style.fontSize) * scale;
    if (size < least - 0.05) faults.push(`${size.toFixed(1)} px: ${said(text)}`);
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const rect of range.getClientRects()) {
      const seen = visible(rect, element);
      if (seen.right - seen.left < 1 || seen.bottom - seen.top < 1) continue;
      if (onTop(seen, element)) boxes.push({ element, text, ...seen });
    }
  }

  for (const element of over.querySelectorAll("*")) {
    if (element instanceof SVGElement || !element.checkVisibility()) continue;
    const style = getComputedStyle(element);
    if (element.matches(".unseen, .unseen *, textarea")) continue;
    const hides = style.overflowX === "hidden" || style.overflowX === "clip";
    // A name cut with dots is whole in its title.
    const whole = style.textOverflow === "ellipsis" && (element.closest("[title]") !== null || element.closest("[aria-label]") !== null);
    if (hides && !whole && element.scrollWidth > element.clientWidth + 1 && element.textContent.trim() !== "" && element.clientWidth > 1)
      faults.push(`cut off at the side: ${said(element.textContent)}`);
    if (
      element instanceof HTMLInputElement &&
      ["text", "search"].includes(element.type) &&
      element.value === "" &&
      element.placeholder !== "" &&
      element.scrollWidth > element.clientWidth + 1
    )
      faults.push(`cut off in its field: ${said(element.placeholder)}`);
    if (element instanceof HTMLButtonElement && element.scrollWidth > element.clientWidth + 1 && !whole && style.overflowX === "visible")
      faults.push(`wider than its button: ${said(element.textContent)}`);
  }

  boxes.sort((a, b) => a.top - b.top);
  for (let i = 0; i < boxes.length; i += 1) {
    const one = boxes[i];
    for (let k = i + 1; k < boxes.length && boxes[k].top < one.bottom; k += 1) {
      const other = boxes[k];
      if (one.element === other.element) continue;
      const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
      const high = Math.min(one.bottom, other.bottom) - other.top;
      // The box of a line is higher than its letters.
      if (wide <= 2 || high <= 0.35 * Math.min(one.bottom - one.top, other.bottom - other.top)) continue;
      const [x, y] = [Math.max(one.left, other.left) + wide / 2, other.top + high / 2];
      if (!parted(one.element, other.element, x, y)) faults.push(`${said(one.text)} lies on ${said(other.text)}`);
    }
  }
  return [...new Set(faults)];
}
