const fs = require("node:fs");
const path = require("node:path");
const { strFromU8, unzipSync } = require("fflate");
const { CopyPlugin, DefinePlugin, IgnorePlugin, ProvidePlugin } = require("webpack");
const policies = require("./src/server/contentSecurityPolicy.json");
const { BundledLicences } = require("./src/tooling/bundledLicences");
const { CompileDown } = require("./src/tooling/compileDown");
const { perpetualManifest } = require("./src/tooling/perpetualManifest");

const dist = path.resolve(__dirname, "dist");
const officeFiles = path.dirname(require.resolve("@microsoft/office-js/dist/office.js"));

/** The host written in the committed manifests and in functions.json; OXYGEN_HOST puts another in its place. */
const { host: developmentHost } = require("./src/catalogue/developmentHost.json");
const host = (process.env.OXYGEN_HOST || developmentHost).replace(/\/+$/, "");
const onHost = (content) => content.toString().split(developmentHost).join(host);

/** A page as it stands, with what is to be filled in between double braces. */
const pageFile = (from, parameters = {}, filename = "[name][ext]") => ({
  from,
  filename,
  transform: (content) => {
    const values = { policy: policies[path.parse(from).name] || policies.default, ...parameters };
    return content.toString().replace(/\{\{(\w+)\}\}/g, (_, name) => {
      if (values[name] === undefined) throw new Error(`${from}: nothing to fill in for ${name}`);
      return values[name];
    });
  },
});

const compiled = (target) => ({
  loader: "swc-loader",
  options: {
    jsc: { parser: { syntax: "typescript", tsx: true }, target, transform: { react: { runtime: "automatic" } } },
    isModule: "unknown",
  },
});

const common = {
  mode: "production",
  devtool: false,
  context: __dirname,
  output: { path: dist, filename: "[name].js", chunkFilename: "[name].js", cssFilename: "[name].css" },
  resolve: { extensions: [".ts", ".tsx", ".mjs", ".js", ".json"] },
  performance: { hints: false },
  stats: "errors-warnings",
};

/**
 * One blocking script for Excel's runtime of its own, which may know ES2016 only. It is one scope that is run when a
 * function is first called (`commonjs: false` keeps it from being taken into the scope of what runs at once). Which
 * program it is for is settled here: the runtime need not be able to tell.
 */
const functionsScript = (name, program, files = []) => ({
  ...common,
  name,
  target: ["web", "es2016"],
  entry: { [name]: "./src/excel/associate.ts" },
  module: { rules: [{ test: /\.ts$/, use: compiled("es2022") }] },
  optimization: {
    splitChunks: false,
    runtimeChunk: false,
    concatenateModules: { commonjs: false },
    minimizer: [new CompileDown("es2016")],
  },
  plugins: [
    new ProvidePlugin({ globalThis: [path.join(__dirname, "src/excel/noGlobal.ts"), "noGlobal"] }),
    new BundledLicences(),
    new DefinePlugin({ OXYGEN_PROGRAM: JSON.stringify(program) }),
    new CopyPlugin({
      patterns: [
        pageFile("src/excel/functions.html", { script: `${name}.js` }, `${name}[ext]`),
        { from: `src/catalogue/generated/${name}.json`, transform: onHost },
        ...files,
      ].map((pattern) => ({ globOptions: { ignore: ["**/*.debug.js"] }, ...pattern })),
    }),
  ],
});

const manifests = [
  { from: "manifest/*.{xml,json}", filename: "[name][ext]", transform: onHost },
  {
    from: "manifest/manifest.xml",
    filename: "manifest-perpetual.xml",
    transform: (content) => perpetualManifest(onHost(content)),
  },
  { from: "manifest/icons", to: "icons" },
];

/** What Excel loads of Microsoft's library, from this host instead of Microsoft's: nothing leaves the network. */
const officeLibrary = [
  { from: path.join(officeFiles, "..", "LICENSE.md"), to: "office", info: { minimized: true } },
  ...[
    "office.js",
    "custom-functions-runtime.js",
    "excel-*16.*.js",
    "o15apptofilemappingtable.js",
    "*/office_strings.js",
  ].map((from) => ({ from, to: "office", context: officeFiles, info: { minimized: true } })),
];

/** The order in which a newcomer wants the samples, the first one opened; others follow by name. */
const reading = ["supply-plan", "quick-checks", "options", "service-and-moving", "function-checks"].map(
  (name) => `${name}.xlsx`,
);
const place = (file) => (reading.includes(file) ? reading.indexOf(file) : reading.length);

/** Links to the sample workbooks with the title and the words of their own document properties, escaped as those are. */
function sampleLinks() {
  const folder = path.join(__dirname, "samples");
  if (!fs.existsSync(folder)) return "";
  return fs
    .readdirSync(folder)
    .filter((file) => /^[^~.].*\.xlsx$/i.test(file))
    .sort((a, b) => place(a) - place(b) || a.localeCompare(b, "en"))
    .map((file) => {
      const core = unzipSync(fs.readFileSync(path.join(folder, file)))["docProps/core.xml"];
      const property = (tag) => new RegExp(`<${tag}>([^<]*)<`).exec(core ? strFromU8(core) : "")?.[1] ?? "";
      const title = property("dc:title") || file.replace(/\.xlsx$/i, "");
      const words = property("dc:description");
      const shown = `<b>${title}</b>${words && ` <span>${words}</span>`}`;
      return `<li><a href="?open=${encodeURIComponent(file)}">${shown}</a></li>`;
    })
    .join("\n");
}

/**
 * A page: `src/<name>/<name>.ts(x)` and `.html` become `dist/<name>.html`, `.js` and `.css`. The help page is written from
 * the catalogue and brings only its script.
 */
const page = (name, { plugins = [], parameters = {}, files = [], ownPage = true, ...changes } = {}) => ({
  ...common,
  name,
  target: ["web", "es2020"],
  entry: { [name]: `./src/${name}/${name}` },
  module: {
    rules: [
      { test: /\.m?[jt]sx?$/, exclude: /node_modules/, use: compiled("es2020") },
      { test: /\.css$/, sideEffects: true },
    ],
  },
  plugins: [
    new BundledLicences(),
    ...(ownPage ? [new CopyPlugin({ patterns: [pageFile(`src/${name}/${name}.html`, parameters), ...files] })] : []),
    ...plugins,
  ],
  ...changes,
});

module.exports = [
  functionsScript("functions", "Microsoft 365", [...manifests, ...officeLibrary]),
  functionsScript("functions-perpetual", "perpetual Excel"),
  page("help", { ownPage: false }),
  page("pane", { files: [pageFile("src/pane/about.html")] }),
  page("sheet", {
    parameters: { samples: sampleLinks() },
    files: [{ from: "samples/*.xlsx", to: "samples" }],
    plugins: [
      // Hyphenation of 75 languages; only English is ever asked for.
      new IgnorePlugin({ resourceRegExp: /^\.\/(?!en-)[a-z0-9-]+-[\w-]{8}\.js$/, contextRegExp: /engine-render/ }),
    ],
    // Served by this computer to itself: making 16 MB smaller would take minutes of each build and save nothing.
    optimization: { minimize: false },
    output: { ...common.output, chunkFilename: "sheet-[id].js" },
  }),
];
