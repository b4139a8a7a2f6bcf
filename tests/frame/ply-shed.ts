// A workshop that makes frames of ply of 12 mm, with panels of aluminium: everything in it is measured.

export const PLY_SHED = `consolewright: 1
kind: workshop
name: shed
stock:
  plate: { material: aluminium, colour: aluminium, nominal: 2 mm, measured: 2 mm, dated: 2026-01-31 }
  ply: { material: plywood, colour: birch, light: opaque, nominal: 12 mm, measured: 11.6 mm, dated: 2026-01-31 }
machines:
  router: { type: router, bed: [1500, 1500], tools: [{ diameter: 3.175 mm }] }
use: { frame: router }
`;
