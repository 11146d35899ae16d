import { type ElapsedMinute, never } from "../base";
import { type Build, pourOf } from "../build";
import type { Clocks } from "../clock";
import type { Solution } from "../schedule";
import { thereAt } from "./amounts";
import { placeStates } from "./open";
import type { PieceSpan, Stands } from "./plan";
import type { StoreNeeds } from "./stores";

/** What stands when. A piece closes from the start of its putting up to the end of its taking down, and serves from finish to start. */
export function standsOf(build: Build, clocks: Clocks, stores: StoreNeeds, s: Solution): Stands {
  const pieces = build.pieces.map((piece): PieceSpan => {
    if (piece.up < 0 && !piece.fromStart) return { up: never, stands: never, gone: never };
    const up = (piece.up < 0 ? 0 : s.start[piece.up]!) as ElapsedMinute;
    const stands = (piece.up < 0 ? 0 : s.finish[piece.up]!) as ElapsedMinute;
    // What stood before the build began has had its time; a pour of this build has not.
    const { goesAfter } = piece;
    const past = piece.up < 0 && (goesAfter === null || pourOf(goesAfter.on) === null);
    const itself = goesAfter === null ? never : past ? stands : thereAt(build, clocks, s, goesAfter, stands);
    const gone = piece.down < 0 ? itself : (Math.min(itself, s.finish[piece.down]!) as ElapsedMinute);
    return { up, stands, gone };
  });
  return { pieces, places: placeStates(build, pieces, s), stock: stockLeft(stores, s) };
}

function stockLeft({ stocks, spans }: StoreNeeds, s: Solution): Stands["stock"] {
  return stocks.map((stock, i) => {
    const changes: [number, number][] = [];
    for (const a of stock.arrivals) changes.push([s.finish[a.job]!, a.number]);
    for (const x of spans) {
      if (x.stock !== i) continue;
      changes.push([s.start[x.out]!, -x.number]);
      if (x.back >= 0) changes.push([s.finish[x.back]!, x.number - x.loss]);
    }
    changes.sort((a, b) => a[0] - b[0]);
    const times: number[] = [0];
    const left: number[] = [stock.inHand];
    for (const [at, by] of changes) {
      const value = left[left.length - 1]! + by;
      if (times[times.length - 1] === at) left[left.length - 1] = value;
      else {
        times.push(at);
        left.push(value);
      }
    }
    return { of: stock.id, times: times as ElapsedMinute[], left };
  });
}
