import { sites } from "../../scenario/velmar";
import type { SiteService } from "./service";

/** Invented tasks of two sites; 46082 is 2026-03-01. */
export const siteServices: readonly [SiteService, SiteService] = [
  {
    sheet: "Karrow Point",
    site: sites.hospital.name,
    harsh: 0.7,
    why: "Salt and dust.",
    readings: [46023, 3310, 46082, 4490],
    tasks: [
      ["Change intake filters", 46055, 1, null, null, "intake filter", 2],
      ["Check and tension belts", 46040, 3, 3650, 1000, "drive belt", 1],
      ["Change compressor oil", 45976, 6, 2400, 3000, "compressor oil, litre", 4],
      ["Change dryer cartridge", 45900, 12, 900, 6000, "dryer cartridge", 1],
      ["Calibrate oxygen analyser", 46061, 1, null, null, "calibration gas", 1],
      ["Check hoses and seals", 46035, 3, null, null, "seal kit", 1],
      ["Test relief valves", 45730, 12, null, null, null, null],
    ],
  },
  {
    sheet: "Lunde Ridge",
    site: sites.hillClinic.name,
    harsh: 1,
    why: "Clean hill air, cool room.",
    readings: [46023, 1205, 46082, 1915],
    tasks: [
      ["Change intake filters", 46062, 1, null, null, "intake filter", 1],
      ["Check and tension belts", 45990, 3, 870, 2000, "drive belt", 1],
      ["Change compressor oil", 45960, 6, 600, 3000, "compressor oil, litre", 2.5],
      ["Calibrate oxygen analyser", 46070, 1, null, null, "calibration gas", 1],
      ["Check hoses and seals", 46010, 3, null, null, "seal kit", 1],
      ["Test relief valves", 45815, 12, null, null, null, null],
    ],
  },
];
