import { test } from "vitest";
import { judgeQuarter } from "./shard";

test("random builds, quarter 3 of 4", () => judgeQuarter(3), 600_000);
