/** Pieces with drawers for tests of slides. The slides and their holes are invented. */

export const slideShop = `
board "maple" any thickness, 8 wide, 120 long
slide "side mount 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side {
  hole 1-1/2 from front   hole 6-1/2 from front   hole 12-1/2 from front
  screws 5/8 long, 1/8 thick
}
slide "side mount 12" side mount, 12 long, 1-3/4 high, takes 1/2 each side {
  hole 1-1/2 from front   hole 10-1/2 from front
  screws 5/8 long, 1/8 thick
}
`;

/** The sideboard of the demo, with its slides on one baseline. */
export function sideboardText(drawers = 'slides "side mount 14", 1/2 above lower edge of front'): string {
  return `units inches to 1/32
${slideShop}
piece "Games sideboard" {
  size 60 wide, 34 high, 17 deep
  case {
    top thick 7/8, over sides { overhang 3/4 at front, 3/4 at ends   slotted behind }
    plinth 3 high, set back 2, thick 3/4
    sides thick 3/4
    bottom thick 3/4, between sides
    stretchers 3-1/2 wide, thick 3/4, under top
    back thick 1/4, in groove 1/4 deep, 1/2 in from back edge
  }
  face inset, gap 3/32 {
    row {
      doors "left" share 1
      partition thick 3/4, shown
      stack opening 18 wide {
        dividers web-frame thick 3/4, rails 2-1/2 wide, behind fronts
        drawer "cards"    front 5 high
        drawer "dice"     front 6 high
        drawer "maps"     front 7 high
        drawer "blankets" rest
      }
      partition thick 3/4, shown
      doors "right" same opening as "left"
    }
    fronts thick 1/2
    drawers { sides "maple" thick 1/2   bottom thick 1/4   corners dovetail   ${drawers} }
  }
}
`;
}
