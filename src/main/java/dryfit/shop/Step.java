package dryfit.shop;

import java.util.List;

/**
 * One step of making a part. Lengths in millimetres, angles in radians.
 *
 * @param kind what is done
 * @param about the label of the joint it is for, or of the view, edge or part it is about; empty if
 *     none
 * @param face the face of the blank it is done from, in a maker's word; empty if none
 * @param sizes what its kind says
 * @param angle what its kind says
 */
public record Step(Kind kind, String about, String face, List<Double> sizes, double angle) {
  public Step {
    sizes = List.copyOf(sizes);
  }

  static Step of(Kind kind, String about) {
    return new Step(kind, about, "", List.of(), 0);
  }

  /** What is done; in each the order of cuts is a matter of the trade. */
  public enum Kind {
    /** The blank is cut out of the board: length, width, thickness as in the cut list. */
    CUT_OUT,
    /** The blank is squared: length, width, thickness, with the oversize that the part keeps. */
    SQUARE,
    /** Reference face and edge are marked, and which way is up, front and outside. */
    MARK,
    /** Bent, before any joint is marked: length along the middle line, tightest radius of it. */
    BEND,
    /** Finish-planed before it is fitted, for planing afterwards would loosen it. */
    FINISH_PLANE,
    /** Foot cut before heights are measured: long side, short side; the angle is off square. */
    FOOT,
    /** The upper end is cut level; the angle is off square. */
    HEAD,
    /** Mortise from a face that stays: depth along the entry; the angle is off square. */
    MORTISE,
    /**
     * Mortise from a flat face that is sawn away later: depth from that face, and how much of it is
     * sawn away.
     */
    MORTISE_BEFORE_SAWING,
    /** Mortise on the finished face, the part lying on the face that is named: depth; lean. */
    MORTISE_LYING_FLAT,
    /** Mortise on the finished face, the part held in its offcuts: depth; lean. */
    MORTISE_IN_OFFCUTS,
    /** Mortise on the finished face, the part held in a cradle: depth; lean. */
    MORTISE_IN_A_CRADLE,
    /** The mortise of a wedged tenon is opened towards the far face, at each end by so much. */
    FLARE,
    /** Pilot holes for screws: depth, diameter. */
    PILOT,
    /** Clearance holes for screws: diameter, how much longer across the grain, head sunk. */
    CLEARANCE,
    /** The hole of a pin, bored through the mortise before the tenon goes in. */
    PIN_HOLE,
    /** The hole of a pin in the tenon: how much nearer to the shoulder it is. */
    PIN_HOLE_IN_TENON,
    /** A step along an edge: wide, deep. */
    REBATE,
    /** A groove for a panel: deep. */
    GROOVE,
    /** Shoulders and tenon: length along the entry; the angle of the shoulder is off square. */
    TENON,
    /** The tenon slants in its part: how far its cheeks are aside at the tip; the slant. */
    SLANT,
    /** Saw cuts for wedges in a tenon: how many, how deep, how wide. */
    KERF,
    /** Shoulders and tenon on the end of a bent part: as {@link #TENON}. */
    TENON_ON_BENT,
    /**
     * A tenon turned on the end of a round part, its shoulder square: length to where the longest
     * side of the shoulder comes.
     */
    TURN_TENON,
    /** The end of a round part turned to go in, which has no shoulder: length. */
    TURN_END,
    /** A shoulder that was turned square is pared to lean: the angle is off square. */
    PARE_SHOULDER,
    /**
     * A shoulder is scribed to the face it meets, after its tenon; the angle of the line through
     * its middle is off square.
     */
    SCRIBE,
    /** An end let in whole: depth. */
    HOUSED_END,
    /** The first outline is sawn. */
    SAW_FIRST,
    /** The second outline is sawn with the offcuts of the first held in their places. */
    SAW_SECOND,
    /** An outline is sawn, and there is no other. */
    SAW,
    /** A taper is sawn, after all joints: where it begins and ends, and what is left there. */
    TAPER,
    /** Turned round. */
    TURN,
    /** The end of a block at a rail: the angle is off square. */
    BLOCK_END,
    /** The board is cut round another part: gap along the grain, across. */
    NOTCH,
    /** The seat is hollowed: depth. */
    HOLLOW,
    /** The edge of the foot is chamfered: size. */
    EASE_FOOT,
    /** Edges are eased last, when no line is measured from them any more: across the flat. */
    EASE,
    /** Edges are chamfered last: along both faces. */
    CHAMFER,
    /** Edges are rounded over last: radius. */
    ROUND_OVER,
    /** Edges that are drawn sharp, of which the sharpness is taken last. */
    BREAK_EDGES
  }
}
