import js from "@eslint/js";
import tseslint from "typescript-eslint";

/** What the functions' runtime on Windows does not have, or what would make a function impure. */
const absentInFunctionsRuntime = [
  "window",
  "document",
  "navigator",
  "localStorage",
  "sessionStorage",
  "indexedDB",
  "fetch",
  "XMLHttpRequest",
  "WebSocket",
  "Intl",
  "WebAssembly",
  "setTimeout",
  "setInterval",
  "process",
  "require",
  "console",
  "globalThis",
].map((name) => ({ name, message: "The functions are pure and run in a JavaScript-only engine." }));

const noClock = {
  selector: "NewExpression[callee.name='Date'][arguments.length=0]",
  message: "Nothing reads the clock.",
};

/** What is newer than ES2016 and the type check of .config/tsconfig.functions.json lets pass. */
const newerThanES2016 = [
  noClock,
  { selector: ":function[async=true]", message: "The functions are synchronous; ES2016 has no async." },
  { selector: "Literal[regex.pattern=/\\(\\?<[=!]/]", message: "ES2016 has no lookbehind." },
  { selector: "Literal[regex.pattern=/\\\\p\\{/i]", message: "ES2016 has no Unicode property escapes." },
  {
    selector: "CallExpression[callee.property.name=/^(localeCompare|toLocale)/]",
    message: "What it gives depends on the machine's language.",
  },
];

export default tseslint.config(
  { ignores: ["**/node_modules/**", "**/dist/**", "**/build/**", "**/generated/**", "samples/**"] },
  js.configs.recommended,
  ...tseslint.configs.recommended,
  {
    files: ["**/*.ts", "**/*.tsx"],
    rules: {
      "@typescript-eslint/no-explicit-any": "error",
      "@typescript-eslint/no-require-imports": "off",
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_", varsIgnorePattern: "^_" }],
      "no-restricted-globals": [
        "error",
        { name: "CustomFunctions", message: "Only src/excel names CustomFunctions." },
        { name: "Office", message: "Only src/excel names Office." },
        { name: "Excel", message: "Only src/excel names Excel." },
      ],
      eqeqeq: ["error", "always", { null: "ignore" }],
      "no-eval": "error",
      "no-new-func": "error",
      "prefer-const": "error",
    },
  },
  {
    files: ["src/functions/**/*.ts", "src/arguments/**/*.ts", "src/models/**/*.ts", "src/cells/**/*.ts"],
    rules: {
      "no-restricted-globals": [
        "error",
        ...absentInFunctionsRuntime,
        { name: "CustomFunctions", message: "Only src/excel names CustomFunctions." },
        { name: "Office", message: "Only src/excel names Office." },
      ],
      "no-restricted-properties": [
        "error",
        { object: "Math", property: "random", message: "The same input gives the same output." },
        { object: "Date", property: "now", message: "Nothing reads the clock." },
      ],
      "no-restricted-syntax": ["error", ...newerThanES2016],
    },
  },
  {
    // A model may throw RangeError when a caller breaks its range; a function has checked the range before.
    files: ["src/functions/**/*.ts", "src/arguments/**/*.ts"],
    rules: {
      "no-restricted-syntax": [
        "error",
        ...newerThanES2016,
        {
          selector: "ThrowStatement",
          message: "A thrown error loses its words in Excel; return invalid(…) or noAnswer(…).",
        },
      ],
    },
  },
  {
    // The cell boundary: what Excel's generator reads as "any cells", and the tests that stand in for cells.
    files: ["src/functions/**/*.ts", "tests/**/*.ts"],
    rules: { "@typescript-eslint/no-explicit-any": "off" },
  },
  {
    // A skipped or focused test makes a run green that has not tested. What lacks a program says so where it is skipped.
    files: ["tests/**/*.ts"],
    rules: {
      "no-restricted-syntax": [
        "error",
        {
          selector:
            "CallExpression > MemberExpression.callee[property.name=/^(only|skip|todo|failing)$/][object.name=/^(it|test|describe)$/]",
          message:
            "Every test runs; one that needs a program is chosen by whether it is there, with a mark in its title.",
        },
        {
          selector:
            "MemberExpression > MemberExpression.object[property.name=/^(only|skip|failing)$/][object.name=/^(it|test|describe)$/]",
          message: "Every test runs.",
        },
        {
          // With a title: "fit" is a word of models too.
          selector:
            "CallExpression[callee.name=/^(fit|xit|xtest|fdescribe|xdescribe)$/][arguments.0.type=/^(Literal|TemplateLiteral)$/]",
          message: "Every test runs.",
        },
        {
          selector: "CallExpression[callee.object.name='fc'][callee.property.name=/^(double|float)$/]",
          message: "Spreads over bit patterns, nearly all close to 0; draw by evenly(low, high) of tests/evenly.ts.",
        },
      ],
    },
  },
  { files: ["src/excel/**/*.ts", "tests/**/*.ts", "src/pane/**/*.ts"], rules: { "no-restricted-globals": "off" } },
  {
    files: ["**/*.js", "**/*.cjs", "**/*.mjs"],
    languageOptions: {
      globals: {
        module: "writable",
        require: "readonly",
        process: "readonly",
        __dirname: "readonly",
        jest: "readonly",
        console: "readonly",
        URL: "readonly",
      },
    },
    rules: { "@typescript-eslint/no-require-imports": "off" },
  },
);
