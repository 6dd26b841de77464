/** An element of a small, well-formed XML file. */
export interface XmlElement {
  name: string;
  attributes: Record<string, string>;
  children: XmlElement[];
  text: string;
}

const tag = /<\?[\s\S]*?\?>|<!--[\s\S]*?-->|<(\/?)([\w:.-]+)((?:\s+[\w:.-]+\s*=\s*"[^"<]*")*)\s*(\/?)>|([^<]+)/y;

/** Reads elements, attributes and text; throws at the first thing that is not well-formed. No DTD, CDATA or entities. */
export const readXml = (source: string): XmlElement => {
  const top: XmlElement = { name: "", attributes: {}, children: [], text: "" };
  const open = [top];
  tag.lastIndex = 0;
  while (tag.lastIndex < source.length) {
    const at = tag.lastIndex;
    const found = tag.exec(source);
    if (!found) throw new Error(`not well-formed at: ${source.slice(at, at + 60)}`);
    const [, closing, name, attributes = "", empty, text] = found;
    const parent = open[open.length - 1] as XmlElement;
    if (text !== undefined) parent.text += text.trim();
    else if (name === undefined) continue;
    else if (closing) {
      if (parent.name !== name) throw new Error(`</${name}> closes <${parent.name}>`);
      open.pop();
    } else {
      const pairs = [...attributes.matchAll(/([\w:.-]+)\s*=\s*"([^"]*)"/g)].map(
        ([, key, value]) => [key, value] as const,
      );
      if (new Set(pairs.map(([key]) => key)).size !== pairs.length) throw new Error(`<${name}> repeats an attribute`);
      const made: XmlElement = { name, attributes: Object.fromEntries(pairs), children: [], text: "" };
      parent.children.push(made);
      if (!empty) open.push(made);
    }
  }
  if (open.length !== 1 || top.children.length !== 1)
    throw new Error("an element is not closed, or there are several roots");
  return top.children[0] as XmlElement;
};

export const allElements = (element: XmlElement): XmlElement[] => [element, ...element.children.flatMap(allElements)];

/** The first element below `element` along a way of names. */
export const childAt = (element: XmlElement, ...names: string[]): XmlElement => {
  let here = element;
  for (const name of names) {
    const next = here.children.find((child) => child.name === name);
    if (!next) throw new Error(`<${here.name}> has no <${name}>`);
    here = next;
  }
  return here;
};
