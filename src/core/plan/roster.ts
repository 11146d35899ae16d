/** One place of a step, held by one person from one instant to another. */
export interface Seat {
  readonly from: number;
  readonly to: number;
  readonly job: number;
  readonly role: string;
}

/** Who is where: by person, seats that lie apart, in time order. */
export class Roster {
  readonly seats: Seat[][];

  constructor(people: number) {
    this.seats = Array.from({ length: people }, () => []);
  }

  /** The seats of a person that meet [from, to). */
  meeting(person: number, from: number, to: number): Seat[] {
    const seats = this.seats[person]!;
    const met: Seat[] = [];
    let k = seats.length - 1;
    while (k >= 0 && seats[k]!.from >= to) k--;
    for (; k >= 0 && seats[k]!.to > from; k--) met.push(seats[k]!);
    return met;
  }

  /** Whether no seat of a person meets [from, to). */
  isFree(person: number, from: number, to: number): boolean {
    const seats = this.seats[person]!;
    let k = seats.length - 1;
    while (k >= 0 && seats[k]!.from >= to) k--;
    return k < 0 || seats[k]!.to <= from;
  }

  add(person: number, seat: Seat): void {
    const seats = this.seats[person]!;
    let k = seats.length;
    while (k > 0 && seats[k - 1]!.from > seat.from) k--;
    if (k === seats.length) seats.push(seat);
    else seats.splice(k, 0, seat);
  }

  remove(person: number, seat: Seat): void {
    const seats = this.seats[person]!;
    seats.splice(seats.lastIndexOf(seat), 1);
  }

  /** Takes a person out of a seat for [from, to) only. */
  cut(person: number, seat: Seat, from: number, to: number): void {
    this.remove(person, seat);
    if (seat.from < from) this.add(person, { ...seat, to: from });
    if (to < seat.to) this.add(person, { ...seat, from: to });
  }

  /** Instants inside [from, to) at which anybody sits down or gets up, with `from` itself. */
  changes(from: number, to: number): number[] {
    const times = new Set([from]);
    this.seats.forEach((_, i) => {
      for (const seat of this.meeting(i, from, to)) for (const t of [seat.from, seat.to]) if (t > from && t < to) times.add(t);
    });
    return [...times].sort((a, b) => a - b);
  }
}
