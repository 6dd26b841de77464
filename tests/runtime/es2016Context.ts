import vm from "node:vm";
import ts from "typescript";

interface Members {
  own: string[];
  prototype: string[];
}

/** What ES2016 has, as TypeScript's own declarations of its library list it: each global with its members. */
const libraryOfES2016 = (): Record<string, Members> => {
  const name = "/empty.ts";
  const options: ts.CompilerOptions = { target: ts.ScriptTarget.ES2016, lib: ["lib.es2016.d.ts"], types: [] };
  const host = ts.createCompilerHost(options);
  const { getSourceFile } = host;
  host.getSourceFile = (file, ...rest) =>
    file === name ? ts.createSourceFile(name, "", ts.ScriptTarget.ES2016) : getSourceFile(file, ...rest);
  const program = ts.createProgram([name], options, host);
  const checker = program.getTypeChecker();
  const file = program.getSourceFile(name)!;
  const membersOf = (type: ts.Type): string[] => checker.getPropertiesOfType(type).map((member) => member.name);
  const library: Record<string, Members> = {};
  for (const global of checker.getSymbolsInScope(file, ts.SymbolFlags.Value)) {
    const type = checker.getTypeOfSymbolAtLocation(global, file);
    const prototype = checker.getPropertyOfType(type, "prototype");
    library[global.name] = {
      own: membersOf(checker.getApparentType(type)),
      prototype: prototype ? membersOf(checker.getTypeOfSymbolAtLocation(prototype, file)) : [],
    };
  }
  // Declared with ES5, but a part of its own (ECMA-402), which the JavaScript-only runtime has not.
  delete library.Intl;
  // TypeScript's own name for what ES2016 leaves nameless.
  delete library.globalThis;
  return library;
};

/** Runs inside the context, whose globals are `whole`: takes away whatever ES2016 has not. */
const keepOnly = (whole: Record<string, unknown>, library: Record<string, Members>): void => {
  const inEvery = ["constructor", "prototype", "length", "name", "arguments", "caller"];
  const keepIn = (holder: object | undefined, kept: string[]): void => {
    if (!holder) return;
    for (const key of Object.getOwnPropertyNames(holder))
      if (kept.indexOf(key) < 0 && inEvery.indexOf(key) < 0) delete (holder as Record<string, unknown>)[key];
  };
  const iterators = Object.getPrototypeOf(Object.getPrototypeOf([][Symbol.iterator]()));
  keepIn(iterators, []);
  for (const name of Object.getOwnPropertyNames(whole)) {
    const members = library[name];
    if (!members) delete whole[name];
    else if (typeof whole[name] === "function" || (typeof whole[name] === "object" && whole[name] !== null)) {
      keepIn(whole[name] as object, members.own);
      keepIn((whole[name] as { prototype?: object }).prototype, members.prototype);
    }
  }
};

/** A bare context, without a host, whose globals and their members are those of ES2016. */
export const es2016Context = (): vm.Context => {
  const context = vm.createContext({});
  vm.runInContext(`(${keepOnly.toString()})(this, ${JSON.stringify(libraryOfES2016())})`, context);
  return context;
};
