/**
 * Texts for the reference, of words that the examples have no use for. They are read like any other text, so what stands
 * here is right.
 */
export const moreSaid = `
units inches to 1/32
let "thin" be 3/32
sheet "MDF" nominal 3/4, actual 3/4, 97 long, 49 wide, no grain, trim 1/2, costs 48 each {
  offcut 40 long, 18 wide
  offcut 24 long, 24 wide, 2 of them
}
board "walnut" nominal 4/4, actual 13/16, 8 wide, 120 long, costs 14 a board foot
board "elm" any thickness, 8 wide, 120 long { offcut 30 long, 5 wide, 1 thick }
veneer "walnut burl" actual 1/42, 96 long, 9 wide
slide "soft 21" side mount, 21 long, takes 1/2 each side, 1-3/4 high, 1/4 free behind, carries 100 lb, costs 31 each {
  hole 1-1/2 from front, 7/8 up   hole 18 from front, 7/8 up   screws 5/8 long, 1/8 thick, costs 0.06 each
}
slide "single 18" centre mount, 18 long, 1/2 high { hole 1-1/2 from front   hole 17 from front   screws 1/2 long, 1/8 thick }
slide "hidden 18" under mount, 18 long, takes 3/16 each side, takes 9/16 below, sides at most 5/8 thick, lifts in 1/4
hinge "butt 2-1/2" butt, 2-1/2 long, leaf 5/8 wide, 1/8 closed, screws 1/2 long, 3 screws in each leaf, doors 5/8 to 1 thick, doors at most 24 wide, for inset doors, costs 6 each
hinge "cup 35" concealed, cup 35mm wide, cup 12mm deep, cup 3mm to 6mm from edge, overlay 12mm more than cup distance, fixing-holes 45mm apart, fixing-holes 9.5mm behind cup, plate 37mm from front, screws 12mm long, for overlay doors
pull "bar 5" 5-1/2 wide, 1/2 high, 5 between screws, stands out 1-1/4, screws 1-1/4 long, thread 3/8 deep, costs 9 each
pull "knob 1" 1 wide, round, of "walnut", stands out 1, thread 3/8 deep
cutter "dado stack" cuts 1/4 to 13/16 wide, at most 1-1/4 deep
dowel "8 mm" 8mm thick, 35mm long, costs 0.05 each
screw "No. 8" 2 long, pilot 1/8, clearance 3/16
screw "No. 6" 3/4 long, pilot 3/32, clearance 9/64, costs 0.08 each
tenon "6 by 40" 6mm thick, 20mm wide, 40mm long, costs 0.3 each
machine "table saw" rips at most 30 wide, crosscuts at most 24, least length 6, least width 1/2, kerf 1/8
machine "track saw" rips at most 106 long, crosscuts at most 60 wide, kerf 5/64
flitch "walnut A" 24 leaves, 6 wide, 96 long
thing "record" { 12-3/8 wide, 1/8 deep, 12-3/8 high   this way up   weighs 1/2 lb }

pattern "wall case" {
  takes "width" or 24
  size "width" wide, 30 high, 12 deep
  case { sides "MDF" }
}
piece "A1" from "wall case" with "width" 18

piece "Base" {
  size 24 wide, 34 high, 24 deep
  case {
    top "MDF" between sides { glued down }
    sides "MDF"
    bottom "MDF" between sides
    toe-space 4 high, 3 deep, of "MDF"
  }
}

piece "Bread chest" {
  size 24 wide, 20 high, 16 deep
  case { sides "MDF"   bottom "MDF" between sides   back "MDF" applied }
  face inset, gap 1/8 {
    stack {
      drawer "bread" rest {
        vent 8 wide, 2 high, 4 up, square corners {
          box larger by 1/8   back 9 wide, 3 high   lining of "walnut" thick 1/4   ledge 1/4 wide, 1/4 deep
        }
      }
      divider panel of "MDF", shown
      false-front "grille" front 6 high { vent 8 wide, 2 high, 2 up, corners 1/4 }
    }
    fronts "MDF"
    drawers { sides "MDF"   bottom "MDF", 1/4 up   corners butt   runners 3/4 high, thick 1/4, of "walnut", by screws "No. 6"   compartments 2 front to back   clear 1/2 above }
  }
}

piece "Shelf unit" {
  size 30 wide, 40 high, 12 deep
  case { sides "MDF"   bottom "MDF" between sides   top "MDF" between sides }
  face {
    stack {
      open "books" share 2 {
        shelves 2 adjustable of "MDF", shy 1/16 {
          shelf underside 6-1/8 up   shelf upper face 14-7/8 up
          pins holes 1/4 wide, 3/8 deep, costs 0.15 each, 1 apart, 1-1/2 from front, 1-1/2 from back, lowest 3 up, highest 20 up
        }
      }
      divider panel of "MDF", shown
      open "boxes" share 1 { shelves 1 on cleats { cleats of "walnut" thick 1/2, 1 high, set back 1/2, by screws "No. 6" } }
    }
  }
}

piece "Cabinet" {
  let "stile" be 1-3/4
  size 48 wide, 34 high, 24 deep
  site {
    alcove 50 wide, 96 high, 26 deep
    window-sill 36 above floor
    door "hall" { hinge 5 right of alcove, 2 forward   30 wide, swings toward piece }
    way-in { opening 30 wide, 80 high   ceiling 96 }
  }
  case {
    top "walnut", over sides { overhang 3/4 at front, 3/4 at ends, 1/4 at back   slotted behind }
    plinth 3 high, set back 2, of "walnut"
    sides "MDF"
    bottom "MDF" between sides
    stretchers 3-1/2 wide of "MDF", under top
    back "MDF" in rabbet 3/8 deep
    frame "walnut" { stiles "stile" wide   top-rail 2 wide   bottom-rail 1-1/2 wide }
    join dado 1/4 deep
  }
  face inset, gap "thin" {
    row {
      lid "records" front 12 wide { single   hinges "butt 2-1/2"   holds 40 "record" }
      divider "MDF"
      stack "middle" rest, at least 16 {
        dividers web-frame of "walnut", rails 2-1/2 wide, behind fronts
        false-front "basin" front 5 high
        drawer "tools" share 1 { runners centre, 1/2 high, 1-1/2 wide   compartments 3 across, of "MDF" thick 1/4, 2 high, dadoes 1/8 deep { compartment 3 wide { holds 1 "record" }   compartment   compartment }   pulls "bar 5", level, 1 on each, 2 below top, screws 1-7/8 long   box 4 high   fronts "walnut" }
        row opening 8 high { door "left" { single }   partition "MDF", shown   doors "right" { pair   fronts "walnut", frame-and-panel { stiles 2 wide   glass thick 1/8, in rabbet 3/8 wide, rabbet 3/8 deep, clearance 1/8, safety }   shelves 1 adjustable { pins system rows }   hinges "butt 2-1/2", 2 to each door, 1 from ends, case gain 1/64 deep   catch magnet, at top   stop at bottom   pulls "knob 1", 1-1/2 from closing edge, 3 below top } }
        open "books" rest { shelves 1 adjustable of "MDF" }
      }
    }
    fronts "walnut"
    drawers { sides "MDF"   bottom "MDF"   corners box-joint   slides "soft 21", 1/4 above lower edge of box, screws 5/8 long   compare "hidden 18"   packers 1 of "walnut"   clear 1/4 below, 1/2 above }
  }
  sequence "tall" grain upright { "records", "tools" }
  sequence "across" grain across, from flitch "walnut A" { "left" to "right"   matched book, centre balanced }
}

piece "Blanket chest" {
  units inches
  size 40 wide, 20 high, 19-1/4 deep
  case {
    lid "elm" thick 3/4, 3/4 from wall, opens 90 degrees {
      overhang 1/2 at front, 1/2 at ends
      hinges "butt 2-1/2", 3 of them
      support torsion, 2 of them, carries 90 inch-pounds
    }
    sides "elm" thick 3/4   bottom "elm" thick 3/4, between sides   back "elm" thick 3/4, applied
  }
}
`;
