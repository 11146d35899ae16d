export { orderDrawing } from "../draw";
