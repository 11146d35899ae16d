declare const kind: unique symbol;

/** A readable id of one sort of thing; the brand keeps a step's id from being used as a place's. */
export type Id<Sort extends string> = string & { readonly [kind]: Sort };

export type StepId = Id<"step">;
export type PieceId = Id<"piece">;
export type PlaceId = Id<"place">;
export type CalendarId = Id<"calendar">;
export type PersonId = Id<"person">;
export type StockId = Id<"stock">;
export type EquipmentId = Id<"equipment">;
export type DeliveryId = Id<"delivery">;
export type BookingId = Id<"booking">;
export type WaitId = Id<"wait">;
export type ChoiceId = Id<"choice">;
export type GroupId = Id<"group">;

/** Letters, digits and dashes, lower case, starting with a letter; "#2" marks the second copy of a group's member. */
export const idPattern = /^[a-z][a-z0-9-]*(#[1-9][0-9]*)?$/;

/** Takes a text for an id of the sort wanted where it is used: for the one place where it has been checked. */
export const asId = <I extends string>(text: string): I => text as I;

/** As a builder writes an id himself: without a copy's number. */
export const writtenIdPattern = /^[a-z][a-z0-9-]*$/;

/** The id as it stands in the document: without the number of a group's copy or of a trial's round. */
export function writtenId(id: string): string {
  const mark = id.indexOf("#");
  return mark < 0 ? id : id.slice(0, mark);
}

/** 2 for "post#2"; 0 for an id without a number. */
export function copyOf(id: string): number {
  const mark = id.indexOf("#");
  return mark < 0 ? 0 : Number(id.slice(mark + 1));
}
