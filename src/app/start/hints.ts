/** How far one has come. */
export interface Stand {
  readonly view: string;
  /** There are dates to look at. */
  readonly planned: boolean;
  /** Something is picked, and its reasons are shown. */
  readonly looked: boolean;
  /** Something was changed. */
  readonly changed: boolean;
}

export interface Hint {
  readonly id: string;
  readonly says: string;
  when(stand: Stand): boolean;
  /** From then on nobody needs it. */
  done(stand: Stand): boolean;
}

const withSteps = ["order", "dates"];

/** In the order in which they help; at most one is shown. */
export const hints: readonly Hint[] = [
  {
    id: "look",
    says: "Pick any step to read why it stands where it does, and what is the last chance for it.",
    when: ({ planned, looked, view }) => planned && !looked && withSteps.includes(view),
    done: ({ planned, looked }) => planned && looked,
  },
  {
    id: "change",
    says: "Change something under “As written”, its hours for one: the foot of the page says what moves. Undo brings it back.",
    when: ({ planned, looked, changed, view }) => planned && looked && !changed && withSteps.includes(view),
    done: ({ planned, looked, changed }) => planned && looked && changed,
  },
];
