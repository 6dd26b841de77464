interface Patchable {
  prototype: object;
}

const patched = new WeakMap<object, Set<string>>();

/** Replaces a method of a class once, however often the engine is set up in one process or page. */
export const replaceMethod = <Method extends (...args: never[]) => unknown>(
  owner: unknown,
  name: string,
  replacement: (original: Method) => Method,
): void => {
  const target = (owner as Patchable).prototype as Record<string, unknown>;
  const done = patched.get(target) ?? new Set<string>();
  if (done.has(name)) return;
  patched.set(target, done.add(name));
  const original = target[name];
  if (typeof original !== "function") throw new Error(`the engine has no method ${name} any more`);
  target[name] = replacement(original as Method);
};
