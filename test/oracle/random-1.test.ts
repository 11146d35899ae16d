import { test } from "vitest";
import { judgeQuarter } from "./shard";

test("random builds, quarter 1 of 4", () => judgeQuarter(1), 600_000);
