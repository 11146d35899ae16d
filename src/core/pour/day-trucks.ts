import type { Finding } from "../base";
import type { Pour } from "../build";
import { type Load, loads, netVolume_m3, type PauseAt, type PourWork, shortLoad_m3, stands_min, usualTruck_m3 } from "../concrete";
import { found } from "./found";
import { isLaid } from "./shapes";

/** The pause falls before the first laid element that something standing goes in before. */
function pauseAt(pour: Pour, work: PourWork): PauseAt | null {
  if (work.pause_min === 0) return null;
  const first = pour.elements.findIndex((e) => isLaid(e.shape));
  const before_m3 = pour.elements.slice(0, Math.max(first, 0)).reduce((sum, e) => sum + netVolume_m3(e.shape, e.rebates) * e.number, 0);
  return { after_m3: before_m3 * (1 + work.waste_percent / 100), lasts_min: work.pause_min };
}

/** Loads of the pour and what is to be said of them; none for concrete mixed on site from sacks. */
export function truckLoads(pour: Pour, work: PourWork): { trucks: readonly Load[]; findings: readonly Finding[] } {
  if (pour.sacks !== null) return { trucks: [], findings: [] };
  const rate_m3_h = work.over_m3_h;
  const trucks = loads(work.order_m3, pour.truck_m3 ?? usualTruck_m3, rate_m3_h, pauseAt(pour, work));
  const findings: Finding[] = [found(pour, "pour.ticket-time", "note", {})];
  const least = Math.min(...trucks.map((t) => t.load_m3));
  if (least < shortLoad_m3) findings.push(found(pour, "pour.short-load", "note", { load_m3: least, short_m3: shortLoad_m3 }, "truck"));
  const slow = trucks.reduce((worst, t) => (t.stands_min > worst.stands_min ? t : worst), trucks[0] as Load);
  if (slow.stands_min > stands_min) {
    const fits_m3 = (rate_m3_h * stands_min) / 60;
    findings.push(
      found(
        pour,
        "pour.truck-waits",
        "look",
        { load_m3: slow.load_m3, stands_min: slow.stands_min, most_min: stands_min, fits_m3 },
        "truck",
      ),
    );
  }
  return { trucks, findings };
}
