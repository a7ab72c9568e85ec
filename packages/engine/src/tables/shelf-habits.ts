import { Length } from '../length/length.ts';
import type { TradeHabit } from './trade-habits.ts';

/** How shelves are carried where the text does not say. Common practice without a source, unless one is named. */

const inch = Length.inches;
const mm = Length.millimetres;

export const PIN_DIAMETER: TradeHabit = {
  inches: [inch(1, 4), '1/4"'],
  metric: [mm(5), '5 mm'],
  because: (size) => `holes for shelf pins are ${size} wide, common practice`,
};
export const PIN_DEPTH: TradeHabit = {
  inches: [inch(3, 8), '3/8"'],
  metric: [mm(10), '10 mm'],
  because: (size) => `holes for shelf pins are about ${size} deep, common practice`,
};
export const PINS_APART: TradeHabit = {
  inches: [inch(1), '1"'],
  metric: [mm(32), '32 mm'],
  because: (size) => `holes for shelf pins are ${size} apart, common practice`,
};
export const PINS_FROM_EDGE: TradeHabit = {
  inches: [inch(3, 2), '1-1/2"'],
  metric: [mm(37), '37 mm'],
  because: (size) => `rows of holes stand ${size} from the front and from the back, common practice`,
};
export const PINS_FROM_END: TradeHabit = {
  inches: [inch(4), '4"'],
  metric: [mm(100), '100 mm'],
  because: (size) => `rows of holes keep ${size} from the lower and the upper edge of an opening, common practice`,
};
export const CLEAT_THICK: TradeHabit = {
  inches: [inch(3, 4), '3/4"'],
  metric: [mm(18), '18 mm'],
  because: (size) => `cleats are ${size} thick, common practice`,
};
export const CLEAT_HIGH: TradeHabit = {
  inches: [inch(1), '1"'],
  metric: [mm(25), '25 mm'],
  because: (size) => `cleats are ${size} high, common practice`,
};
export const CLEAT_SET_BACK: TradeHabit = {
  inches: [inch(1, 2), '1/2"'],
  metric: [mm(12), '12 mm'],
  because: (size) => `cleats begin ${size} behind the front of the shelf, common practice`,
};

/**
 * The 32 mm system: holes of 5 mm, 32 mm apart, the front row 37 mm from the front edge, or 37 mm behind an inset front,
 * and rows a whole number of pitches apart. A convention of the trade that several makers describe; no standard
 * defines it.
 */
export const SYSTEM_DIAMETER = mm(5);
export const SYSTEM_PITCH = mm(32);
export const SYSTEM_FROM_FRONT = mm(37);
