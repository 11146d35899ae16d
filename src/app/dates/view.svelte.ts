/** How the sheet is looked at; nothing of it is in the document. */
export class SheetView {
  scale = $state<"weekends" | "whole">("weekends");
  unfolded = $state(false);
  slack = $state(false);
  /** Steps of zoom, 0: as many weekends as fit, ten at most. */
  zoom = $state(0);
  keyShown = $state(false);
  tableShown = $state(false);

  toggleScale(): void {
    this.scale = this.scale === "whole" ? "weekends" : "whole";
  }

  closer(by: 1 | -1): void {
    if (this.scale === "whole" && by > 0) this.scale = "weekends";
    else this.zoom = Math.max(-3, Math.min(6, this.zoom + by));
  }
}
