/** What a solver says of one instance. */
export interface Answer {
  readonly status: "proved" | "planned" | "infeasible" | "not-found";
  readonly start: readonly number[] | null;
  /** From handing over the model to the answer, its translation by the solver included; `ownSeconds`: what it says its search took. */
  readonly seconds: number;
  readonly cpuSeconds: number;
  readonly ownSeconds: number | null;
}

/** Seconds of the clock on the wall and of this process' processors, since it was made. */
export class Watch {
  private readonly wall = performance.now();
  private readonly cpu = process.cpuUsage();

  read(): { readonly seconds: number; readonly cpuSeconds: number } {
    const { user, system } = process.cpuUsage(this.cpu);
    return { seconds: (performance.now() - this.wall) / 1000, cpuSeconds: (user + system) / 1e6 };
  }
}
