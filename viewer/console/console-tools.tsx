// What works on the picture: which hand, from where, what is cut, faded and shown.

import type { JSX, TargetedFocusEvent } from "preact";
import type { Opening } from "./camera-goal.ts";
import {
  askTrueShapes,
  changeLook,
  type Hand,
  hand,
  look,
  measuring,
  NOTHING_MEASURED,
  scene,
  trueShapes,
  wanted,
} from "./console-state.ts";
import { CutTool } from "./cut-tool.tsx";
import type { Look } from "./look.ts";
import { cancelDrag } from "./panel-drag.ts";
import { cameraNow } from "./shown-picture.ts";
import { standingViews } from "./standing-views.ts";

export function ConsoleTools(): JSX.Element {
  return (
    <div class="console-tools">
      <Hands />
      <CutTool />
      <Shown />
      <Views />
    </div>
  );
}

const HANDS: readonly (readonly [Hand, string])[] = [
  ["look", "Look round"],
  ["move", "Move panels"],
  ["measure", "Measure"],
];

function Hands(): JSX.Element {
  return (
    <fieldset>
      <legend>Pointer</legend>
      {HANDS.map(([id, words]) => (
        <label key={id}>
          <input
            type="radio"
            name="console-hand"
            checked={hand.value === id}
            onChange={() => takeHand(id)}
          />
          {words}
        </label>
      ))}
    </fieldset>
  );
}

const takeHand = (id: Hand): void => {
  cancelDrag();
  measuring.value = NOTHING_MEASURED;
  changeLook({ notes: [], marks: [], stretch: null });
  hand.value = id;
};

const ANY_OPENING: Opening = { across: 40, upright: 40 };

function Views(): JSX.Element | null {
  if (scene.value === null) return null;
  // Names alone: the goals are worked out when one is chosen, for the picture as large as it is then.
  const views = standingViews(scene.value, ANY_OPENING, look.value);
  return (
    <fieldset>
      <legend>Look from</legend>
      {views.map(({ id, words }) => (
        <button key={id} type="button" onClick={() => goTo(id)}>
          {words}
        </button>
      ))}
    </fieldset>
  );
}

const goTo = (id: string): void => {
  const camera = cameraNow();
  if (camera === null || scene.value === null) return;
  const view = standingViews(scene.value, camera.opening, look.value).find(
    (each) => each.id === id,
  );
  if (view !== undefined) wanted.value = { ...view.goal };
};

type Switch = {
  readonly [Key in keyof Look]: Look[Key] extends boolean ? Key : never;
}[keyof Look];

const SWITCHES: readonly (readonly [Switch, string])[] = [
  ["fadeFrame", "Fade the frame"],
  ["fadePanels", "Fade the panels"],
  ["showReach", "Reach"],
  ["showSight", "Sight lines"],
  ["showSweeps", "Sweeps of levers"],
  ["showNames", "Names"],
];

/** What is shown and faded, folded away under one word: a picture needs the room. */
function Shown(): JSX.Element {
  const hasOperator = scene.value?.operator != null;
  return (
    <details class="console-fold" onFocusOut={closeLeft}>
      <summary>Show</summary>
      <fieldset aria-label="What is shown">
        {SWITCHES.filter(([key]) => hasOperator || !OF_OPERATOR.has(key)).map(([key, words]) => (
          <label key={key}>
            <input
              type="checkbox"
              checked={look.value[key]}
              onChange={(event) => changeLook({ [key]: event.currentTarget.checked })}
            />
            {words}
          </label>
        ))}
        <button
          type="button"
          disabled={trueShapes.value.kind === "asked"}
          onClick={() => void askTrueShapes()}
        >
          True shapes of prints
        </button>
      </fieldset>
    </details>
  );
}

/** Nothing is ticked that nobody is there for. */
const OF_OPERATOR: ReadonlySet<Switch> = new Set(["showReach", "showSight"]);

/** Whoever goes on elsewhere has done with it. */
const closeLeft = (event: TargetedFocusEvent<HTMLDetailsElement>): void => {
  const { currentTarget, relatedTarget } = event;
  if (relatedTarget instanceof Node && !currentTarget.contains(relatedTarget))
    currentTarget.open = false;
};
