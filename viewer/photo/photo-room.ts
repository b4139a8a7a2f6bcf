// All that is loaded behind the door of the photograph.

export { keepPaper } from "./paper-acts.ts";
export { PaperOnPanel } from "./paper-on-panel.tsx";
export { PhotoDrawer } from "./photo-drawer.tsx";
export { keepPicture } from "./photo-picture.ts";
export { PhotoUnder } from "./photo-under.tsx";
