/** Something that can be picked from a list. */
export interface Option {
  readonly id: string;
  readonly name: string;
}
