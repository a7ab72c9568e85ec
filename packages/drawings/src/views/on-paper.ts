import type { Projection } from '../parts-in-view.ts';
import type { Box, Dimension, Group, Line, Point, Primitive, Text } from '../primitives.ts';
import type { Flat } from '../shapes/view-direction.ts';

/** From a picture in real millimetres, v upwards, to paper; and what is on paper to another place of it. */

export function onPaper({ u, v }: Flat, to: Projection): Point {
  return { x: to.x + u * to.factor, y: to.y - v * to.factor };
}

export function movedBox(box: Box, by: Point): Box {
  return { left: box.left + by.x, right: box.right + by.x, top: box.top + by.y, bottom: box.bottom + by.y };
}

export function movedGroup(group: Group, by: Point): Group {
  return { ...group, children: group.children.map((child) => moved(child, by)) };
}

export function moved(primitive: Primitive, by: Point): Primitive {
  switch (primitive.kind) {
    case 'line':
      return movedLine(primitive, by);
    case 'polyline':
    case 'area':
      return { ...primitive, points: primitive.points.map((point) => shifted(point, by)) };
    case 'rectangle':
      return { ...primitive, box: movedBox(primitive.box, by) };
    case 'circle':
      return { ...primitive, centre: shifted(primitive.centre, by) };
    case 'text':
      return movedText(primitive, by);
    case 'arrow':
      return { ...primitive, from: shifted(primitive.from, by), to: shifted(primitive.to, by) };
    case 'dimension':
      return movedDimension(primitive, by);
    case 'group':
      return movedGroup(primitive, by);
    default: {
      const unknown: never = primitive;
      return unknown;
    }
  }
}

function movedDimension(dimension: Dimension, by: Point): Dimension {
  const { figure, leader } = dimension;
  return {
    ...dimension,
    line: movedLine(dimension.line, by),
    ticks: dimension.ticks.map((tick) => movedLine(tick, by)),
    ...(figure === undefined ? {} : { figure: movedText(figure, by) }),
    ...(leader === undefined ? {} : { leader: { ...leader, points: leader.points.map((p) => shifted(p, by)) } }),
  };
}

function movedLine(line: Line, by: Point): Line {
  return { ...line, from: shifted(line.from, by), to: shifted(line.to, by) };
}

function movedText(text: Text, by: Point): Text {
  return { ...text, at: shifted(text.at, by) };
}

function shifted({ x, y }: Point, by: Point): Point {
  return { x: x + by.x, y: y + by.y };
}
