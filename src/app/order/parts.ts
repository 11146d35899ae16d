// What of the Order view is fetched when it is first shown, or after the first view is painted.
export const blocked = () => import("./Blocked.svelte").then((part) => part.default);
export const trying = () => import("./Try.svelte").then((part) => part.default);
export const steps = () => import("./StepList.svelte").then((part) => part.default);
export const things = () => import("./ThingList.svelte").then((part) => part.default);
export const search = () => import("../search").then((room) => room.SearchStrip);

export const orderParts = [blocked, trying, steps, things, search] as const;
