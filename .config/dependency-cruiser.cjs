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
      ["arguments", "models", "excel"],
      "a function reads its arguments and calls a model",
    ),
    only("models", "models", ["models"], "a model is plain arithmetic"),
    only(
      "arguments",
      "arguments",
      ["arguments", "models", "excel"],
      "arguments know cells, their errors, and the ranges and words that models hold",
    ),
    only("excel", "excel", ["excel", "catalogue/generated"], "the boundary knows the functions by the generated list"),
    only(
      "catalogue",
      "catalogue",
      ["catalogue", "functions", "arguments", "excel"],
      "the reader joins what the function files say",
    ),
    only("engine", "engine", ["engine", "catalogue", "excel"], "the local engine registers the catalogue's functions"),
    only(
      "workbooks",
      "workbooks",
      ["workbooks", "catalogue", "engine", "excel"],
      "samples are calculated by the local engine",
    ),
    only("pane", "pane", ["pane", "catalogue", "excel"], "the pane shows the catalogue"),
    only("sheet", "sheet", ["sheet", "catalogue", "engine", "excel", "pane"], "the local sheet shows samples live"),
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
      from: { path: "^src/(functions|arguments|models)/" },
      to: { path: "node_modules", pathNot: "node_modules/(zod|yalps|@stdlib)/" },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsConfig: { fileName: "tsconfig.json" },
    tsPreCompilationDeps: true,
  },
};
