// Shapes and photographs that a step of the history has brought beside the texts: taken out when the step is taken back, brought
// again when it is done again. What lies where the design is kept stays there: undo takes away no file of anybody's, and says so.

import { effect } from "@preact/signals";
import { isSameBytes } from "../../src/pack/same-bytes.ts";
import { binaryAt, history, takeAwayBinary } from "../desk.ts";
import type { Content, History, Move, Step } from "../history.ts";
import type { Store } from "./store.ts";
import { store, tell } from "./stored-state.ts";

type Way = "back" | "forth";

let last: History = history.value;
let turn: Promise<void> = Promise.resolve();

effect(() => {
  const [before, now] = [last, history.value];
  last = now;
  const back = before.done.at(-1);
  const forth = before.undone[0];
  if (back !== undefined && now.undone[0] === back) follow(back, "back");
  else if (forth !== undefined && now.done.at(-1) === forth) follow(forth, "forth");
});

type BytesMove = Extract<Move, { readonly kind: "bytes" }>;

/** One after the other: reading bytes takes its time, and a hand on the keys is quicker. */
function follow({ what, moves }: Step, way: Way): void {
  const files = moves.filter((move) => move.kind === "bytes");
  const into = store.peek();
  if (files.length === 0 || into === null) return;
  turn = turn.then(async () => {
    const words = await carried(files, way, into).catch((): readonly string[] => [
      `what it takes to see to ${files.map(({ file }) => file).join(", ")} could not be fetched`,
    ]);
    const begun = way === "back" ? "Taken back" : "Done again";
    if (store.peek() === into) tell([`${begun}: ${what}`, ...words].join("; "));
  });
}

async function carried(
  files: readonly BytesMove[],
  way: Way,
  into: Store,
): Promise<readonly string[]> {
  const wanted = files.map((move) => ({ move, to: way === "back" ? move.before : move.after }));
  const brought = new Map(
    wanted.flatMap(({ move, to }): [string, Content][] => (to === null ? [] : [[move.file, to]])),
  );
  const { bringFilesBack } = await import("./snapshot-files-back.ts");
  const { stays } = await bringFilesBack({ files: brought, leftOut: [] }, into);
  const going = wanted.filter(({ to }) => to === null).map(({ move }) => move);
  return [...stays, ...(await takenOut(going, into))];
}

async function takenOut(moves: readonly BytesMove[], into: Store): Promise<readonly string[]> {
  const [out, kept, others]: [string[], string[], string[]] = [[], [], []];
  for (const move of moves) {
    const { file, isInPage } = move;
    const isSame = await isAsBrought(move);
    if (store.peek() !== into) return [];
    if (binaryAt(file) === undefined) continue;
    if (!isSame) others.push(file);
    else if (isInPage && takeAwayBinary(file)) out.push(file);
    else kept.push(file);
  }
  return [
    ...(out.length === 0 ? [] : [`out of the page again: ${out.join(", ")}`]),
    ...others.map((file) => `${file} is another file now and stays`),
    ...(kept.length === 0
      ? []
      : [`undo takes no file away from where the design is kept: ${kept.join(", ")} stays`]),
  ];
}

/** Where the bytes are kept no more nobody can tell: it is left alone. */
async function isAsBrought({ file, before, after }: BytesMove): Promise<boolean> {
  const content = after ?? before;
  const now = binaryAt(file);
  if (content === null || now === undefined || now === null) return false;
  const { contentAt } = await import("./snapshot-bytes.ts");
  const bytes = await contentAt(content).catch(() => null);
  return bytes !== null && isSameBytes(now, bytes);
}
