import { test } from "vitest";
import { judgeQuarter } from "./shard";

test("random builds, quarter 4 of 4", () => judgeQuarter(4), 600_000);
