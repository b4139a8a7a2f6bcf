// The panels of the console by name, and what is to be said of the chosen one: where it stands, its stack drawn apart, what
// it meets while it is moved, and what a drop may write.

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { decimal } from "../../src/geometry/number.ts";
import type { Vector } from "../../src/geometry/space/vector.ts";
import { arithmeticNoise } from "../../src/geometry/tolerance.ts";
import { choosePanel } from "../desk.ts";
import { calledByKey } from "../panel-called.ts";
import { isSeenWhole } from "./camera-goal.ts";
import { movedByKey } from "./console-keys.ts";
import type { DragMeeting, ScenePanel } from "./console-messages.ts";
import {
  changeLook,
  hand,
  look,
  measuring,
  scene,
  standingGroups,
  wanted,
} from "./console-state.ts";
import { listedMeetings, moveWords, nearestOf, restWords } from "./drag-words.ts";
import { pairWords } from "./measure-words.ts";
import { room } from "./open-room.ts";
import { cancelDrag, chooseToWork, drag, offer, settleDrag, takeOption } from "./panel-drag.ts";
import { cameraNow } from "./shown-picture.ts";
import { stackPoints } from "./stack-points.ts";
import { panelGoal } from "./standing-views.ts";

export function PanelReadout(): JSX.Element | null {
  const shown = scene.value;
  if (shown === null) return null;
  const chosen = shown.panels.find(({ name }) => name === look.value.chosen);
  return (
    <section class="console-panels" aria-labelledby="console-panels-title">
      <OfferWords />
      <DragWords />
      <h2 id="console-panels-title">Panels on their rails</h2>
      <ul>
        {shown.panels.map((panel) => (
          <li key={panel.name}>
            <button
              type="button"
              aria-pressed={panel === chosen}
              onClick={() => chooseToWork(panel.name)}
              onKeyDown={(event) => {
                if (panel === chosen && movedByKey(event.key)) event.preventDefault();
              }}
            >
              <b>{calledByKey(panel)}</b> <small>{placeWords(panel)}</small>
            </button>
          </li>
        ))}
      </ul>
      {chosen !== undefined && <Chosen panel={chosen} />}
      <MeasuredWords />
    </section>
  );
}

function MeasuredWords(): JSX.Element | null {
  const { first, second, pair } = measuring.value;
  return first === null || second === null || pair === null ? null : (
    <p class="measured">{pairWords({ first, second, pair })}</p>
  );
}

const placeWords = ({ place }: ScenePanel): string =>
  place === null
    ? "on feet of its own"
    : `bay ${place.bay}, modules ${decimal(place.module, 2)} to ${decimal(place.module + place.modules, 2)}`;

function Chosen({ panel }: { readonly panel: ScenePanel }): JSX.Element {
  const isTurned = look.value.turned === panel.name;
  return (
    <div class="chosen">
      <h3>{calledByKey(panel)}</h3>
      <dl>
        <dt>stands</dt>
        <dd>{placeWords(panel)}</dd>
        <dt>depth</dt>
        <dd>{decimal(panel.depth, 1)} mm from its front</dd>
        {panel.followers.length > 0 && <dt>with it move</dt>}
        {panel.followers.length > 0 && <dd>{panel.followers.join(", ")}</dd>}
      </dl>
      <label>
        Layers apart
        <input
          type="range"
          min="0"
          max="60"
          step="1"
          value={look.value.apart}
          onInput={(event) => {
            changeLook({ apart: event.currentTarget.valueAsNumber });
            holdPanel(panel);
          }}
        />
        <output>{decimal(look.value.apart, 0)} mm</output>
      </label>
      <p class="buttons">
        <button type="button" onClick={() => goToPanel(panel)}>
          Go to it
        </button>
        <button
          type="button"
          aria-pressed={isTurned}
          onClick={() => {
            changeLook({ turned: isTurned ? null : panel.name });
            goToPanel(panel);
          }}
        >
          Turn it round
        </button>
        <button
          type="button"
          onClick={() => {
            choosePanel(panel.name);
            room.value = "panel";
          }}
        >
          Open the panel
        </button>
      </p>
      {hand.value === "move" && panel.place !== null && (
        <p class="hint">
          Drag it, or press the arrow keys: a module each. Enter writes it, Escape puts it back.
        </p>
      )}
    </div>
  );
}

const goToPanel = (panel: ScenePanel): void => {
  const camera = cameraNow();
  if (camera !== null) wanted.value = panelGoal(pointsOf(panel), camera);
};

/** What is drawn apart stays in the picture: the view goes back where it would run out of it. */
const holdPanel = (panel: ScenePanel): void => {
  const camera = cameraNow();
  if (camera !== null && !isSeenWhole(pointsOf(panel), camera.goal, camera.opening))
    goToPanel(panel);
};

const pointsOf = (panel: ScenePanel): readonly Vector[] => {
  const group = standingGroups().get(panel.name);
  return group === undefined ? [] : stackPoints(group, panel, look.value);
};

const KINDS: Readonly<Record<DragMeeting["kind"], string>> = {
  clash: "Clash",
  touching: "Touches",
  near: "Near",
};

function DragWords(): JSX.Element | null {
  const now = drag.value;
  if (now === null) return null;
  const reading = now.reading;
  const { listed, rest } = listedMeetings(reading?.meetings ?? []);
  const nearest = nearestOf(listed);
  return (
    <div
      class="dragged"
      data-module={now.module}
      data-milliseconds={reading?.milliseconds.toFixed(2)}
    >
      <h3>{moveWords(now)}</h3>
      {reading !== null && (
        <ul>
          {reading.over > arithmeticNoise && (
            <li class="clash">
              <b>Over the end</b> of its bay by {decimal(reading.over, 2)} modules
            </li>
          )}
          {listed.map((met) => (
            <li key={`${met.a.id} ${met.b.id}`} class={met.kind}>
              <b>{met === nearest ? "Least clearance" : KINDS[met.kind]}</b> {met.a.words},{" "}
              {met.b.words}
              {met.kind !== "touching" && `: ${decimal(met.length, 2)} mm`}
              {met.kind === "clash" && " along the rail"}
            </li>
          ))}
          {rest.length > 0 && <li>{restWords(rest)}</li>}
          {listed.length === 0 && (
            <li>Free of everything within {decimal(reading.within, 2)} mm</li>
          )}
        </ul>
      )}
      {offer.value === null && (
        <p class="buttons">
          <button type="button" onClick={() => void settleDrag()}>
            Write it
          </button>
          <button type="button" onClick={cancelDrag}>
            Put it back
          </button>
        </p>
      )}
    </div>
  );
}

function OfferWords(): JSX.Element | null {
  const now = offer.value;
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (now === null) return;
    box.current?.scrollIntoView({ block: "nearest" });
    return lentFocus(box.current?.querySelector("button") ?? null);
  }, [now]);
  if (now === null) return null;
  return (
    <div
      ref={box}
      class="offer"
      role="alertdialog"
      aria-label="What is to be written"
      aria-describedby="offer-why"
      onKeyDown={(event) => {
        // The Enter that asked, still held down, is no answer.
        if (event.repeat && event.key === "Enter") event.preventDefault();
      }}
    >
      <p id="offer-why">{now.why}</p>
      <p class="buttons">
        {now.options.map((option) => (
          <button key={option.words} type="button" onClick={() => takeOption(option)}>
            {option.words}
          </button>
        ))}
        <button type="button" onClick={cancelDrag}>
          Put it back
        </button>
      </p>
    </div>
  );
}

/** Gives the focus to it; what is given back returns the focus to where it was, unless it has gone elsewhere meanwhile. */
const lentFocus = (to: HTMLElement | null): (() => void) => {
  const from = document.activeElement;
  to?.focus({ preventScroll: true });
  return () => {
    const isLost = document.activeElement === document.body || document.activeElement === to;
    if (isLost && from instanceof HTMLElement && from.isConnected)
      from.focus({ preventScroll: true });
  };
};
