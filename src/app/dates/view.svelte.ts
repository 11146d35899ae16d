import { zoomWithin } from "./zoom";

/** What a sheet must be laid out anew for. */
export interface Look {
  readonly scale: "weekends" | "whole";
  readonly unfolded: boolean;
  /** Steps of zoom, 0: as many weekends as fit, ten at most. */
  readonly zoom: number;
}

/** How the sheet is looked at; nothing of it is in the document. */
export class SheetView {
  scale = $state<Look["scale"]>("weekends");
  unfolded = $state(false);
  slack = $state(false);
  /** How many weekends, or weeks, are in sight together. */
  seen = $state.raw<{ readonly count: number; readonly what: "weekends" | "weeks" }>({ count: 10, what: "weekends" });
  zoom = $state(0);
  keyShown = $state(false);
  tableShown = $state(false);

  get look(): Look {
    return { scale: this.scale, unfolded: this.unfolded, zoom: this.zoom };
  }

  toggleScale(): void {
    this.scale = this.scale === "whole" ? "weekends" : "whole";
  }

  closer(by: number): void {
    if (this.scale === "whole") {
      if (by > 0) this.scale = "weekends";
    } else this.zoom = zoomWithin(this.zoom + by);
  }

  /** Single keys while the sheet has the focus; false for a key that is none of these. */
  key(key: string): boolean {
    const acts: Readonly<Record<string, () => void>> = {
      u: () => {
        this.unfolded = !this.unfolded;
      },
      w: () => this.toggleScale(),
      s: () => {
        this.slack = !this.slack;
      },
      k: () => {
        this.keyShown = !this.keyShown;
      },
      "+": () => this.closer(1),
      "=": () => this.closer(1),
      "-": () => this.closer(-1),
    };
    const act = acts[key.toLowerCase()];
    act?.();
    return act !== undefined;
  }
}
