const fs = require("node:fs");
const path = require("node:path");
const CopyPlugin = require("copy-webpack-plugin");
const { strFromU8, unzipSync } = require("fflate");
const HtmlPlugin = require("html-webpack-plugin");
const CssPlugin = require("mini-css-extract-plugin");
const { DefinePlugin, IgnorePlugin, ProvidePlugin } = require("webpack");
const policies = require("./src/server/contentSecurityPolicy.json");
const { BundledLicences } = require("./src/tooling/bundledLicences");
const { CompileDown } = require("./src/tooling/compileDown");

const dist = path.resolve(__dirname, "dist");
const officeFiles = path.dirname(require.resolve("@microsoft/office-js/dist/office.js"));

/** The host written in the committed manifests and in functions.json; OXYGEN_HOST puts another in its place. */
const { host: developmentHost } = require("./src/catalogue/developmentHost.json");
const host = (process.env.OXYGEN_HOST || developmentHost).replace(/\/+$/, "");
const onHost = (content) => content.toString().split(developmentHost).join(host);

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
  output: { path: dist, filename: "[name].js", chunkFilename: "[name].js" },
  resolve: { extensions: [".ts", ".tsx", ".mjs", ".js", ".json"] },
  performance: { hints: false },
  stats: "errors-warnings",
};

/**
 * One blocking script for Excel's runtime of its own, which may know ES2016 only. It is one scope that is run when a
 * function is first called (`commonjs: false` keeps it from being taken into the scope of what runs at once).
 */
const functionsScript = {
  ...common,
  name: "functions",
  target: ["web", "es2016"],
  entry: { functions: "./src/excel/associate.ts" },
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
    new DefinePlugin({ OXYGEN_PROGRAM: JSON.stringify("Microsoft 365") }),
    plainPage("functions.html", "./src/excel/functions.html"),
    new CopyPlugin({
      patterns: [
        { from: "src/catalogue/generated/functions.json", transform: onHost },
        { from: "manifest/*.{xml,json}", to: "[name][ext]", transform: onHost },
        { from: "manifest/icons", to: "icons" },
        { from: path.join(officeFiles, "..", "LICENSE.md"), to: "office", info: { minimized: true } },
        // What Excel loads of Microsoft's library, from this host instead of Microsoft's: nothing leaves the network.
        ...[
          "office.js",
          "custom-functions-runtime.js",
          "excel-*16.*.js",
          "o15apptofilemappingtable.js",
          "*/office_strings.js",
        ].map((from) => ({ from, to: "office", context: officeFiles, info: { minimized: true } })),
      ].map((pattern) => ({ globOptions: { ignore: ["**/*.debug.js"] }, ...pattern })),
    }),
  ],
};

/** A page with nothing bundled for it. */
function plainPage(filename, template) {
  return new HtmlPlugin({ filename, template, inject: false, templateParameters: { policy: policies.default } });
}

/** The order in which a newcomer wants the samples, the first one opened; others follow by name. */
const reading = ["supply-plan", "quick-checks", "options", "service-and-moving", "function-checks"].map(
  (name) => `${name}.xlsx`,
);
const place = (file) => (reading.includes(file) ? reading.indexOf(file) : reading.length);

/** The sample workbooks with the title and the words of their own document properties. */
function sampleWorkbooks() {
  const folder = path.join(__dirname, "samples");
  if (!fs.existsSync(folder)) return [];
  return fs
    .readdirSync(folder)
    .filter((file) => /^[^~.].*\.xlsx$/i.test(file))
    .sort((a, b) => place(a) - place(b) || a.localeCompare(b, "en"))
    .map((file) => {
      const core = unzipSync(fs.readFileSync(path.join(folder, file)))["docProps/core.xml"];
      const property = (tag) => new RegExp(`<${tag}>([^<]*)<`).exec(core ? strFromU8(core) : "")?.[1] ?? "";
      return { file, title: property("dc:title") || file.replace(/\.xlsx$/i, ""), words: property("dc:description") };
    });
}

/** A page: `src/<name>/<name>.ts(x)` and `.html` become `dist/<name>.html`, `.js` and `.css`. */
const page = (name, { plugins = [], parameters = {}, ...changes } = {}) => ({
  ...common,
  name,
  target: ["web", "es2020"],
  entry: { [name]: `./src/${name}/${name}` },
  module: {
    rules: [
      { test: /\.m?[jt]sx?$/, exclude: /node_modules/, use: compiled("es2020") },
      { test: /\.css$/, use: [CssPlugin.loader, "css-loader"], sideEffects: true },
    ],
  },
  plugins: [
    new BundledLicences(),
    new CssPlugin({ filename: "[name].css" }),
    new HtmlPlugin({
      filename: `${name}.html`,
      template: `./src/${name}/${name}.html`,
      templateParameters: { policy: policies[name] || policies.default, ...parameters },
    }),
    ...plugins,
  ],
  ...changes,
});

module.exports = [
  functionsScript,
  page("pane", { plugins: [plainPage("about.html", "./src/pane/about.html")] }),
  page("sheet", {
    parameters: { samples: sampleWorkbooks() },
    plugins: [
      new CopyPlugin({ patterns: [{ from: "samples/*.xlsx", noErrorOnMissing: true }] }),
      // Hyphenation of 75 languages; only English is ever asked for.
      new IgnorePlugin({ resourceRegExp: /^\.\/(?!en-)[a-z0-9-]+-[\w-]{8}\.js$/, contextRegExp: /engine-render/ }),
    ],
    // Served by this computer to itself: making 16 MB smaller would take minutes of each build and save nothing.
    optimization: { minimize: false },
    output: { ...common.output, chunkFilename: "sheet-[id].js" },
  }),
];
