/**
 * Changes a live tree of the page into a wanted one in place, so that focus, scroll and zoom survive every new picture.
 * Knows nothing of pictures: nodes are matched by key, and only what differs is touched.
 */

/** What makes a node the same node in two pictures. Elements without a name are matched by order. */
function nameOf(element: Element): string {
  const named = element.getAttribute('data-key') ?? element.getAttribute('data-part') ?? element.id;
  return `${element.tagName} ${named}`;
}

/** Names may repeat (an outline and its label are one part), so each carries its turn among equals. */
function keysOf(nodes: readonly Node[]): Map<Node, string> {
  const turns = new Map<string, number>();
  const keys = new Map<Node, string>();
  for (const node of nodes) {
    const name = node instanceof Element ? nameOf(node) : `#${node.nodeType}`;
    const turn = turns.get(name) ?? 0;
    turns.set(name, turn + 1);
    keys.set(node, `${name} ${turn}`);
  }
  return keys;
}

function patchAttributes(live: Element, wanted: Element): void {
  for (const { name } of [...live.attributes]) {
    // What the reader has folded out stays so: that is his to say, not the picture's.
    if (!wanted.hasAttribute(name) && name !== 'open') live.removeAttribute(name);
  }
  for (const { name, value, namespaceURI } of [...wanted.attributes]) {
    if (live.getAttribute(name) !== value) live.setAttributeNS(namespaceURI, name, value);
  }
}

function patchChildren(live: Element, wanted: Element): void {
  const wantedNodes = [...wanted.childNodes];
  const wantedKeys = keysOf(wantedNodes);
  const stillWanted = new Set(wantedKeys.values());
  const standing = new Map<string, Node>();
  for (const [node, key] of keysOf([...live.childNodes])) {
    // What is gone goes first: then whatever stays in order need not be moved, and moving would cost it the focus.
    if (stillWanted.has(key)) standing.set(key, node);
    else live.removeChild(node);
  }
  let here: Node | null = live.firstChild;
  for (const node of wantedNodes) {
    const match = standing.get(wantedKeys.get(node) ?? '');
    if (match === undefined) {
      live.insertBefore(node, here);
      continue;
    }
    if (match === here) here = here.nextSibling;
    else live.insertBefore(match, here);
    patchNode(match, node);
  }
}

/** `data-keep` on what is wanted: whatever stands inside is to stay as it is. */
function patchNode(live: Node, wanted: Node): void {
  if (live instanceof Element && wanted instanceof Element) {
    patchAttributes(live, wanted);
    if (!wanted.hasAttribute('data-keep')) patchChildren(live, wanted);
  } else if (live.nodeValue !== wanted.nodeValue) {
    live.nodeValue = wanted.nodeValue;
  }
}

/** Where focus goes when the element that had it is gone: to the same part elsewhere, else to the nearest holder. */
function restoreFocus(root: Element, lost: Element, holders: readonly Element[]): void {
  if (root.ownerDocument.activeElement === lost) return;
  const part = lost.getAttribute('data-part');
  const twin =
    part === null
      ? undefined
      : [...root.querySelectorAll('[data-part][tabindex], [data-part] button')].find(
          (element) => element.closest('[data-part]')?.getAttribute('data-part') === part,
        );
  const heir = lost.isConnected ? lost : (twin ?? holders.find((holder) => holder.isConnected));
  if (heir instanceof HTMLElement || heir instanceof SVGElement) heir.focus({ preventScroll: true });
}

/**
 * Makes `live` look like `wanted`, a detached element of the same kind that is used up by it. Scroll positions stay
 * because scrolling elements stay; focus stays on the same thing, or goes to the nearest focusable element around it.
 */
export function patch(live: Element, wanted: Element): void {
  const focused = live.ownerDocument.activeElement;
  const inside = focused !== null && focused !== live && live.contains(focused) ? focused : undefined;
  const holders: Element[] = [];
  for (let up = inside?.parentElement; up && live.contains(up); up = up.parentElement) {
    if (up.hasAttribute('tabindex')) holders.push(up);
  }
  patchNode(live, wanted);
  if (inside !== undefined) restoreFocus(live, inside, holders);
}
