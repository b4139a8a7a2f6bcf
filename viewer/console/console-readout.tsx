// The panels of the console by name, and what is to be said of the chosen one: where it stands, its stack drawn apart, what
// it meets while it is moved, and what a drop may write.

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { decimal } from "../../src/geometry/number.ts";
import { choosePanel } from "../desk.ts";
import { calledByKey } from "../panel-called.ts";
import { movedByKey } from "./console-keys.ts";
import type { DragMeeting, ScenePanel } from "./console-messages.ts";
import { changeLook, hand, look, measuring, scene, wanted } from "./console-state.ts";
import { faceLift } from "./look.ts";
import { measureWords } from "./measure-words.ts";
import { room } from "./open-room.ts";
import { cancelDrag, chooseToWork, drag, offer, settleDrag, takeOption } from "./panel-drag.ts";
import { cameraNow } from "./shown-picture.ts";
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
      {measuring.value.pair !== null && (
        <p class="measured">{measureWords(measuring.value.pair)}</p>
      )}
    </section>
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
          onInput={(event) => changeLook({ apart: event.currentTarget.valueAsNumber })}
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
  // To the middle of a stack that is drawn apart.
  const face = faceLift(look.value, panel);
  const apart =
    look.value.turned === panel.name ? { lift: face, tall: 0 } : { lift: face / 2, tall: face };
  if (camera !== null && scene.value !== null)
    wanted.value = panelGoal(scene.value, panel, { ...camera, ...apart });
};

const KINDS: Readonly<Record<DragMeeting["kind"], string>> = {
  clash: "Clash",
  touching: "Touches",
  near: "Near",
};

/** By kinds, so that the clashes of the list and of its rest are those of the line under the picture. */
const restWords = (rest: readonly DragMeeting[]): string => {
  const count = (kind: DragMeeting["kind"]): number =>
    rest.filter((met) => met.kind === kind).length;
  const [clashes, touches, nears] = [count("clash"), count("touching"), count("near")];
  return [
    ...(clashes > 0 ? [`${clashes} more ${clashes === 1 ? "clash" : "clashes"}`] : []),
    ...(touches > 0 ? [`${touches} ${touches === 1 ? "touches" : "touch"}`] : []),
    ...(nears > 0 ? [`${nears} near`] : []),
  ].join(", ");
};

/** All of them would be a wall of words: the gravest first, the rest counted. */
const LISTED = 8;

function DragWords(): JSX.Element | null {
  const now = drag.value;
  if (now === null) return null;
  const reading = now.reading;
  return (
    <div
      class="dragged"
      data-module={now.module}
      data-milliseconds={reading?.milliseconds.toFixed(2)}
    >
      <h3>
        {now.panel}: module {decimal(now.from, 2)} to {decimal(now.module, 2)}
      </h3>
      {reading !== null && (
        <ul>
          {reading.over > 1e-6 && (
            <li class="clash">
              <b>Over the end</b> of its bay by {decimal(reading.over, 2)} modules
            </li>
          )}
          {reading.meetings.slice(0, LISTED).map((met) => (
            <li key={`${met.a.id} ${met.b.id}`} class={met.kind}>
              <b>{KINDS[met.kind]}</b> {met.a.words}, {met.b.words}
              {met.kind !== "touching" && `: ${decimal(met.length, 2)} mm`}
              {met.kind === "clash" && " along the rail"}
            </li>
          ))}
          {reading.meetings.length > LISTED && <li>{restWords(reading.meetings.slice(LISTED))}</li>}
          {reading.meetings.length === 0 && <li>Free of everything within 5 mm</li>}
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
