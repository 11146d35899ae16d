import type { Display } from "../../core/base";
import type { Fix } from "../../core/pour";
import { sentence } from "../text";
import { ofHundred } from "./figures";
import { partName } from "./parts";
