/**
 * The functions script: everything Excel's custom-functions runtime loads. Excel waits while it loads, so only the ids
 * are made known then; the functions are set up when one of them is first called.
 */
import { functionIds } from "../catalogue/generated/functionIds";

/** An import would run at once, and one that waits would be a promise. */
declare const require: (file: "./calls") => typeof import("./calls");

for (const id of functionIds)
  CustomFunctions.associate(id, (...given: unknown[]) => require("./calls").callOf(id)(...given));
