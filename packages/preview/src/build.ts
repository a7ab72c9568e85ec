/** Builds elements of the page. Text enters as text nodes and attributes only, never as markup. */

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An element with its attributes (those that are undefined are left out) and children. */
export function build<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes,
  ...children: readonly (Node | string | undefined)[]
): HTMLElementTagNameMap[Tag] {
  return furnish(document.createElement(tag), attributes, children);
}

export function buildSvg<Tag extends keyof SVGElementTagNameMap>(
  tag: Tag,
  attributes: Attributes,
  ...children: readonly (Node | string | undefined)[]
): SVGElementTagNameMap[Tag] {
  return furnish(document.createElementNS('http://www.w3.org/2000/svg', tag), attributes, children);
}

function furnish<E extends Element>(
  element: E,
  attributes: Attributes,
  children: readonly (Node | string | undefined)[],
): E {
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined) element.setAttribute(name, String(value));
  }
  for (const child of children) {
    if (child !== undefined) element.append(child);
  }
  return element;
}
