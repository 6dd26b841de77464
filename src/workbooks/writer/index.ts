export { buildWorkbook } from "./buildWorkbook";
export * from "./calculation";
export * from "./cells";
export * from "./description";
export { calculateWith } from "./engineCalculation";
export { formats, withUnit } from "./numberFormats";
export { tabColours, type Mark, type Role } from "./theme";
