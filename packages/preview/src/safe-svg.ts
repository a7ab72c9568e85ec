/**
 * Lets a drawing into the page: parsed as XML and rebuilt from known elements and attributes only, so that whatever a
 * name in the text may contain, nothing of it can run, load or point outside. Knows nothing of what is drawn.
 */

const svgNamespace = 'http://www.w3.org/2000/svg';

const elements: ReadonlySet<string> = new Set([
  'svg',
  'g',
  'defs',
  'symbol',
  'marker',
  'pattern',
  'clipPath',
  'use',
  'path',
  'line',
  'polyline',
  'polygon',
  'rect',
  'circle',
  'ellipse',
  'text',
  'tspan',
  'title',
  'desc',
]);

const attributes: ReadonlySet<string> = new Set([
  'id',
  'class',
  'role',
  'viewBox',
  'preserveAspectRatio',
  'transform',
  'version',
  'x',
  'y',
  'x1',
  'y1',
  'x2',
  'y2',
  'cx',
  'cy',
  'r',
  'rx',
  'ry',
  'dx',
  'dy',
  'd',
  'points',
  'width',
  'height',
  'rotate',
  'fill',
  'fill-opacity',
  'fill-rule',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'stroke-dasharray',
  'stroke-dashoffset',
  'stroke-linecap',
  'stroke-linejoin',
  'stroke-miterlimit',
  'vector-effect',
  'opacity',
  'color',
  'visibility',
  'pointer-events',
  'paint-order',
  'shape-rendering',
  'clip-path',
  'clip-rule',
  'font-family',
  'font-size',
  'font-style',
  'font-weight',
  'font-variant',
  'letter-spacing',
  'text-anchor',
  'dominant-baseline',
  'alignment-baseline',
  'text-rendering',
  'textLength',
  'lengthAdjust',
  'marker-start',
  'marker-mid',
  'marker-end',
  'markerWidth',
  'markerHeight',
  'markerUnits',
  'orient',
  'refX',
  'refY',
  'patternUnits',
  'patternContentUnits',
  'patternTransform',
  'clipPathUnits',
  'href',
]);

function allowed(name: string, value: string): boolean {
  if (!attributes.has(name) && !/^(data|aria)-[a-z-]+$/.test(name)) return false;
  if (name === 'href') return /^#[\w-]+$/.test(value);
  // Paint and clip may point into the drawing itself and nowhere else.
  return !/url\s*\(/i.test(value) || /^url\(#[\w-]+\)$/.test(value);
}

function rebuild(source: Element, document: Document): Element {
  const copy = document.createElementNS(svgNamespace, source.localName);
  for (const { name, value } of source.attributes) {
    if (allowed(name, value)) copy.setAttribute(name, value);
  }
  for (const child of source.childNodes) {
    if (child instanceof Element) {
      if (child.namespaceURI === svgNamespace && elements.has(child.localName)) copy.append(rebuild(child, document));
    } else if (child.nodeType === Node.TEXT_NODE || child.nodeType === Node.CDATA_SECTION_NODE) {
      copy.append(document.createTextNode(child.nodeValue ?? ''));
    }
  }
  return copy;
}

/** The drawing as elements of `document`; `undefined` when the text is not an SVG that can be read. */
export function readSvg(text: string, document: Document): Element | undefined {
  const parsed = new DOMParser().parseFromString(text, 'image/svg+xml');
  const root = parsed.documentElement;
  if (root.localName !== 'svg' || root.namespaceURI !== svgNamespace) return undefined;
  if (parsed.querySelector('parsererror') !== null) return undefined;
  return rebuild(root, document);
}
