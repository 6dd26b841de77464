type Child = Node | string | null;
type Attributes = Record<string, string | boolean | EventListener>;

/**
 * Makes an element. Attributes that are functions become listeners (`onclick`), `true` sets an empty attribute and
 * `false` leaves it out; children that are null are left out. Text goes in as text, never as markup.
 */
export const element = <Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: Child[]
): HTMLElementTagNameMap[Tag] => {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === "function") made.addEventListener(name.replace(/^on/, ""), value);
    else if (value !== false) made.setAttribute(name, value === true ? "" : value);
  }
  made.append(...children.filter((child): child is Node | string => child !== null));
  return made;
};

/** An element that the page's own HTML holds. */
export const byId = <Kind extends HTMLElement>(id: string): Kind => document.getElementById(id) as Kind;
