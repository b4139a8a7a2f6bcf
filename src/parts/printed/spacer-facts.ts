// What is known about a spacer besides its shape.

import { contoursOverlap } from "../../geometry/distance.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { mm } from "../../geometry/quantity.ts";
import { measuredBoss } from "./bosses.ts";
import { LAMP_PLUG, PASSAGE_CORNER } from "./cable-passage.ts";
import type { Joint } from "./joint.ts";
import { tidy } from "./opaque-wall.ts";
import { edgeRoom } from "./pocket-edge.ts";
import { POCKET_CLEARANCE } from "./pockets.ts";
import type {
  ChannelFact,
  CollarFact,
  NotchFact,
  PrintedFacts,
  WallFact,
} from "./printed-facts.ts";
import { lampHeight, litPlane, type SpacerPlan } from "./spacer-plan.ts";
import { LANE_CLEARANCE } from "./strip-lanes.ts";

export const spacerFacts = (plan: SpacerPlan, joints: readonly Joint[]): PrintedFacts => {
  const { heights, wall, outline, rooms, rim } = plan;
  const box = contourExtent(outline);
  const isLit = plan.source !== null;
  return {
    box: { plan: box, rear: heights.rear, front: heights.front },
    walls: wallFacts(plan, joints),
    floor: {
      thickness: wall.floor,
      layers: wall.floorLayers,
      layer: wall.layer,
      opaqueFrom: wall.opaqueFrom,
    },
    rim: isLit
      ? { overlap: rim.overlap, seatDepth: tidy(heights.front - heights.seat), wall: rim.wall }
      : null,
    collars: isLit ? collarFacts(plan) : [],
    pockets: plan.pockets.map((pocket) => ({
      owner: pocket.owner,
      contours: pocket.regions.map((region) => region.outline),
      clearance: mm(POCKET_CLEARANCE),
      from: heights.rear,
      to: heights.front,
      edge: edgeRoom(pocket, outline),
    })),
    bosses: plan.bosses.map((boss) => measuredBoss(boss, { outline, pockets: rooms })),
    channels: channelFacts(plan),
    notches: notchFacts(plan),
    boards: [],
    joints: joints.map(({ fact }) => fact),
    flatness: {
      longest: mm(Math.max(extentWidth(box), extentHeight(box))),
      thickness: tidy(heights.front - heights.rear),
    },
    inside: "none",
  };
};

const wallFacts = (plan: SpacerPlan, joints: readonly Joint[]): readonly WallFact[] => {
  const { wall, rim } = plan;
  const fact = (
    kind: WallFact["kind"],
    owners: readonly string[],
    thickness = wall.thickness,
  ): WallFact => ({
    kind,
    owners,
    thickness,
    lines: Math.round(thickness / wall.line),
    line: wall.line,
    opaqueFrom: wall.opaqueFrom,
  });
  const collars =
    plan.source === null ? [] : collarFacts(plan).map(({ owners }) => fact("collar", owners));
  return [
    fact("rim", [plan.layer.id], tidy(rim.overlap + rim.wall)),
    ...collars,
    ...plan.circuits.map(({ circuit }) => fact("circuit", [circuit])),
    ...joints.map((joint) => fact("joint", joint.fact.between.map(String))),
  ];
};

/** The dark rooms, each with whoever stands in it. */
const collarFacts = ({
  rooms,
  pockets,
  wall,
  heights,
  outline,
}: SpacerPlan): readonly CollarFact[] =>
  rooms.map((room) => {
    const members = pockets.filter(({ regions }) =>
      regions.some((region) => contoursOverlap(region.outline, room.outline)),
    );
    const least = Math.min(wall.thickness, edgeRoom({ owner: "", regions: [room] }, outline));
    return {
      owners: members.map(({ owner }) => owner),
      inner: room.outline,
      thickness: mm(least),
      from: heights.rear,
      to: heights.front,
    };
  });

const channelFacts = (plan: SpacerPlan): readonly ChannelFact[] => {
  const { source } = plan;
  if (source === null) return [];
  const top = lampHeight(plan, source);
  const distance = tidy(litPlane(plan.layout, plan.layer) - top);
  return plan.areas.flatMap(({ circuit, lanes }) =>
    lanes.map(
      (lane): ChannelFact => ({
        part: source.id,
        circuit,
        width: tidy(source.width + 2 * LANE_CLEARANCE),
        length: tidy(source.joint + lane.cuts * source.length + (lane.cuts - 1) * source.between),
        from: lane.from,
        to: lane.to,
        cuts: lane.cuts,
        leds: lane.leds,
        pitch: source.pitch,
        lampHeight: top,
        distance,
      }),
    ),
  );
};

const notchFacts = (plan: SpacerPlan): readonly NotchFact[] =>
  plan.areas.flatMap(({ circuit, passage }) =>
    passage === null
      ? []
      : [
          {
            circuit,
            at: passage.at,
            exit: passage.exit,
            passage: passage.passage,
            plug: LAMP_PLUG,
            cornerRadius: PASSAGE_CORNER,
            turns: 1,
          },
        ],
  );
