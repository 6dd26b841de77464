/** The import directions of the layers; DEVELOPERS.md draws them. */
const only = (name, from, to, comment) => ({
  name,
  comment,
  severity: "error",
  from: { path: `^src/${from}/` },
  to: { path: "^src/", pathNot: to.map((layer) => `^src/${layer}/`) },
});

module.exports = {
  forbidden: [
    only(
      "functions",
      "functions",
      ["arguments", "models", "cells"],
      "a function reads its arguments and calls a model",
    ),
    only("models", "models", ["models"], "a model is plain arithmetic"),
    only("cells", "cells", ["cells", "models"], "what goes into and comes out of a cell, without a host"),
    only(
      "arguments",
      "arguments",
      ["arguments", "models", "cells"],
      "arguments know cells, their errors, and the ranges and words that models hold",
    ),
    only(
      "excel",
      "excel",
      ["excel", "cells", "catalogue/generated"],
      "the host knows the functions by the generated list",
    ),
    only(
      "catalogue",
      "catalogue",
      ["catalogue", "functions", "arguments", "cells", "models"],
      "the reader joins what the function files say",
    ),
    only(
      "check",
      "check",
      ["check", "catalogue", "cells", "models"],
      "the check traces kinds through the formulas of a workbook",
    ),
    only(
      "engine",
      "engine",
      ["engine", "catalogue", "check", "cells", "models"],
      "the local engine registers the catalogue's functions",
    ),
    only(
      "workbooks",
      "workbooks",
      ["workbooks", "catalogue", "engine", "check", "cells", "models"],
      "samples are calculated by the local engine and quote the defaults",
    ),
    only("help", "help", ["help", "pane", "catalogue", "cells"], "the help page's search is the pane's"),
    only("library", "library", ["library", "cells", "models"], "a program's way to the functions, without a host"),
    only("pane", "pane", ["pane", "catalogue", "excel", "check", "cells"], "the pane shows the catalogue"),
    only(
      "sheet",
      "sheet",
      ["sheet", "catalogue", "engine", "excel", "pane", "check", "cells"],
      "the local sheet shows samples live",
    ),
    only("server", "server", ["server"], "a static server"),
    {
      name: "no function imports another",
      severity: "error",
      from: { path: "^src/functions/" },
      to: { path: "^src/functions/" },
    },
    { name: "no circles", severity: "error", from: { path: "^src/" }, to: { circular: true } },
    {
      name: "the functions script stays small",
      comment: "what the functions import from outside the project",
      severity: "error",
      from: { path: "^src/(functions|arguments|models|cells)/" },
      to: { path: "node_modules", pathNot: "node_modules/(zod|yalps)/" },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsConfig: { fileName: "tsconfig.json" },
    tsPreCompilationDeps: true,
  },
};
