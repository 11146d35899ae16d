import { test } from "vitest";
import { judgeQuarter } from "./shard";

test("random builds, quarter 2 of 4", () => judgeQuarter(2), 600_000);
