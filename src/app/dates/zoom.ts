/** A step of zoom makes a day so many times as wide. */
export const stepOfZoom = 1.3;
const [narrowest, widest] = [-3, 6];

/** As near to a zoom as there is one. */
export const zoomWithin = (zoom: number): number => Math.max(narrowest, Math.min(widest, zoom));

/** How many steps of zoom come nearest to `times` as wide, as far as there are any. */
export const stepsOfZoom = (times: number, zoom: number): number =>
  zoomWithin(zoom + Math.round(Math.log(times) / Math.log(stepOfZoom))) - zoom;
