// One switch for each layer of the stack, front to back, and for what is drawn over it.

import type { JSX } from "preact";
import { decimal } from "../src/geometry/number.ts";
import type { LayerLayout } from "../src/layout/panel-layout.ts";
import { hidden, panel, showSheet } from "./desk.ts";

/** What is drawn over the layers; layer ids are kebab-case, so that these can't be taken for one. */
const OVERLAYS = { components: "Components", markings: "Markings" } as const;

export function LayerList(): JSX.Element | null {
  const layout = panel.value?.layout ?? null;
  if (layout === null) return null;
  return (
    <fieldset class="layers">
      <legend>Layers, front to back</legend>
      {Object.entries(OVERLAYS).map(([name, words]) => (
        <Switch key={name} name={`:${name}`} words={words} detail="" sample={null} />
      ))}
      {layout.layers.map((layer) => (
        <Switch
          key={layer.id}
          name={layer.id}
          words={layer.id}
          detail={detailOf(layer)}
          sample={lineClass(layer)}
        />
      ))}
    </fieldset>
  );
}

interface SwitchProps {
  readonly name: string;
  readonly words: string;
  readonly detail: string;
  /** Class of the line that its openings are drawn with. */
  readonly sample: string | null;
}

function Switch({ name, words, detail, sample }: SwitchProps): JSX.Element {
  return (
    <label class="layer" data-layer={name}>
      <input
        type="checkbox"
        checked={!hidden.value.has(name)}
        onChange={(event) => showSheet(name, event.currentTarget.checked)}
      />
      <span>{words}</span>
      {sample !== null && (
        <svg class={`sample ${sample}`} viewBox="0 0 12 2" aria-hidden="true">
          <path d="M0 1H12" />
        </svg>
      )}
      <small>{detail}</small>
    </label>
  );
}

/** A line of its own for each layer, told apart by its dashes as well as by its colour. */
export const lineClass = (layer: LayerLayout): string => `depth-${layer.index % 4}`;

function detailOf(layer: LayerLayout): string {
  const thickness = `${decimal(layer.thickness.nominal, 2)} mm`;
  const openings = layer.cutOuts.length === 1 ? "1 opening" : `${layer.cutOuts.length} openings`;
  return [layer.stock?.id ?? layer.kind, thickness, openings].join(", ");
}
