/** First in, first out, each job at most once at a time; ring buffer. */
export class JobQueue {
  private readonly ring: Int32Array;
  private readonly inside: Uint8Array;
  private head = 0;
  private size = 0;

  constructor(jobs: number) {
    this.ring = new Int32Array(Math.max(1, jobs));
    this.inside = new Uint8Array(jobs);
  }

  push(j: number): void {
    if (this.inside[j] === 1) return;
    this.inside[j] = 1;
    let at = this.head + this.size;
    if (at >= this.ring.length) at -= this.ring.length;
    this.ring[at] = j;
    this.size++;
  }

  /** -1 when empty. */
  pop(): number {
    if (this.size === 0) return -1;
    const j = this.ring[this.head]!;
    this.head = this.head + 1 === this.ring.length ? 0 : this.head + 1;
    this.size--;
    this.inside[j] = 0;
    return j;
  }
}
