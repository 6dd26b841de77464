import { transform } from "@swc/core";
import { Compilation, sources, type Compiler } from "webpack";

/**
 * Compiles and shortens whole bundles, so that what newer syntax needs in an older engine is in each of them once and
 * not in each of its files. Characters beyond ASCII are escaped: one of them makes an engine keep, and read, the whole
 * script in two bytes a character.
 */
export class CompileDown {
  constructor(private readonly target: "es2016") {}

  private async compiled(bundle: string): Promise<string> {
    const { code } = await transform(bundle, {
      configFile: false,
      swcrc: false,
      isModule: false,
      minify: true,
      jsc: {
        parser: { syntax: "ecmascript" },
        target: this.target,
        assumptions: { ignoreFunctionName: true, noDocumentAll: true, setPublicClassFields: true },
        minify: {
          // keep_fargs: how many arguments a function takes tells the boundary where Excel's own one begins.
          compress: { ecma: 2016, keep_fargs: true, passes: 3, toplevel: true },
          format: { asciiOnly: true, comments: false },
          mangle: { toplevel: true },
        },
      },
    });
    // Shortened as a whole, the bundle loses its own scope; without one its names would land among those of the page.
    return `(()=>{${code}})();`;
  }

  apply(compiler: Compiler): void {
    compiler.hooks.compilation.tap("CompileDown", (compilation) => {
      const stage = Compilation.PROCESS_ASSETS_STAGE_OPTIMIZE_SIZE;
      compilation.hooks.processAssets.tapPromise({ name: "CompileDown", stage }, async () => {
        const bundles = compilation.getAssets().filter(({ name, info }) => name.endsWith(".js") && !info.minimized);
        for (const { name, source } of bundles) {
          const code = await this.compiled(source.source().toString());
          compilation.updateAsset(name, new sources.RawSource(code), { minimized: true });
        }
      });
    });
  }
}
