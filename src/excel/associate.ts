/** The functions script: everything Excel's custom-functions runtime loads. */
import { functions } from "../catalogue/generated/functions";
import { wrapForExcel } from "./boundary";

for (const [id, call] of functions) CustomFunctions.associate(id, wrapForExcel(call));
