// All deeds with what is picked that are loaded with the first pick.

export { gapSelection, lineUpSelection, makePattern, spaceSelection } from "./arrange-acts.ts";
export { copySelection } from "./copy-acts.ts";
export { removeSelection } from "./remove-acts.ts";
export { Picked } from "./ticket-picked.tsx";
export { turnSelection } from "./turn-acts.ts";
