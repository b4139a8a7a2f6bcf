// What to buy and to make for a panel, in exact pieces, one list: components, what is fitted to them, what holds them,
// sheets, fixings, fasteners of the mount, spares. Ordered by section, then by id.

import type { Catalogue } from "../catalogue/record.ts";
import type { StockDesign } from "../design/workshop-design.ts";
import { csvText } from "../export/csv.ts";
import { markdownTable } from "../export/markdown-table.ts";
import { type Extent, extentHeight, extentWidth } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { decimal } from "../geometry/number.ts";
import type { LayerLayout, PlacedComponent } from "../layout/panel-layout.ts";
import type { SheetPart } from "../parts/sheet-part.ts";
import { fittedScrews } from "./fitted-screws.ts";
import { mountFasteners } from "./mount-fasteners.ts";
import type { PackFile } from "./pack-file.ts";
import type { PanelForPack } from "./panel-pack.ts";
import { paperFile } from "./paper-file.ts";
import { stackScrews } from "./stack-screws.ts";

interface PartsListRow {
  readonly section: Section;
  readonly count: number;
  readonly part: string;
  readonly title: string;
  /** Ids of what it is for, or a remark. */
  readonly use: string;
}

const SECTIONS = [
  "components",
  "fitted to components",
  "nuts, washers and screws of components",
  "screws of trims and lamp boxes",
  "sheets",
  "other layers",
  "stack fixings",
  "fasteners of the mount",
  "spares",
] as const;

type Section = (typeof SECTIONS)[number];

export const partsListPapers = (panel: PanelForPack): readonly PackFile[] => {
  const rows = partsList(panel);
  return [
    paperFile("parts-list", "parts-list.md", partsListText(rows)),
    paperFile(
      "parts-list",
      "parts-list.csv",
      csvText(
        ["section", "count", "part", "title", "use"],
        rows.map(({ section, count, part, title, use }) => [section, count, part, title, use]),
      ),
    ),
  ];
};

const partsList = (panel: PanelForPack): readonly PartsListRow[] => [
  ...componentRows(panel),
  ...fittedRows(panel),
  ...holdingRows(panel),
  ...fittedScrews(panel).map((row) => ({
    section: "screws of trims and lamp boxes" as const,
    ...row,
  })),
  ...sheetRows(panel),
  ...layerRows(panel),
  ...stackScrews(panel).map((row) => ({ section: "stack fixings" as const, ...row })),
  ...mountFasteners(panel).map((row) => ({ section: "fasteners of the mount" as const, ...row })),
  ...spareRows(panel),
];

const partsListText = (rows: readonly PartsListRow[]): string =>
  [
    "# Parts list",
    "",
    "Exact pieces; spares stand by themselves at the end. Nuts and washers mostly come in the bag with their part: look before you order.",
    "",
    ...SECTIONS.flatMap((section) => sectionText(section, rows)),
  ].join("\n");

const sectionText = (section: Section, rows: readonly PartsListRow[]): readonly string[] => {
  const own = rows.filter((row) => row.section === section);
  if (own.length === 0) return [];
  return [
    `## ${section.slice(0, 1).toUpperCase()}${section.slice(1)}`,
    "",
    markdownTable(
      [
        { title: "pieces", align: "right" },
        { title: "part", align: "left" },
        { title: "what it is", align: "left" },
        { title: "for", align: "left" },
      ],
      own.map(({ count, part, title, use }) => [String(count), part, title, use]),
    ),
  ];
};

interface Need {
  readonly part: string;
  readonly title: string;
  readonly count: number;
  readonly use: string;
}

/** Needs of one part added up, their uses named, in the order of the part's id. */
const gathered = (section: Section, needs: readonly Need[]): readonly PartsListRow[] => {
  const parts = [...new Set(needs.map(({ part }) => part))].sort();
  return parts.map((part) => {
    const own = needs.filter((need) => need.part === part);
    return {
      section,
      part,
      title: own[0]?.title ?? "",
      count: own.reduce((sum, { count }) => sum + count, 0),
      use: [...new Set(own.map(({ use }) => use))].join(", "),
    };
  });
};

const componentRows = ({ layout }: PanelForPack): readonly PartsListRow[] =>
  gathered(
    "components",
    layout.components.map((component) => ({
      part: component.part.id,
      title: component.part.title,
      count: 1,
      use: useOf(component),
    })),
  );

const useOf = ({ id, common }: PlacedComponent): string =>
  common.fitted === "later" ? `${id} (fitted later)` : id;

const fittedRows = ({ layout }: PanelForPack): readonly PartsListRow[] =>
  gathered(
    "fitted to components",
    layout.components.flatMap((component) =>
      component.fitted.map(({ id, title }) => ({
        part: id,
        title,
        count: 1,
        use: useOf(component),
      })),
    ),
  );

const holdingRows = ({ layout, catalogue }: PanelForPack): readonly PartsListRow[] =>
  gathered(
    "nuts, washers and screws of components",
    layout.components.flatMap((component) =>
      holdingParts(component).map(({ part, count }) => ({
        part,
        count,
        title: titleOf(part, catalogue),
        use: useOf(component),
      })),
    ),
  );

const holdingParts = ({
  part: { hold },
}: PlacedComponent): readonly { readonly part: string; readonly count: number }[] => {
  switch (hold.kind) {
    case "bush":
      return [hold.nut, ...hold.washers].map((part) => ({ part, count: 1 }));
    case "screws":
      return [{ part: hold.screw, count: hold.holes.length }];
    case "snap":
    case "behind":
      return [];
  }
};

const titleOf = (id: string, catalogue: Catalogue): string =>
  catalogue.hardware.get(id)?.title ?? id;

const sheetRows = ({ sheetParts, fitted, layout }: PanelForPack): readonly PartsListRow[] => {
  const outline = contourExtent(layout.outline);
  return [
    ...sheetParts.map((part) => sheetRow(part, outline)),
    ...fitted.sheets.flatMap((part) =>
      part.setUps.slice(0, 1).map(({ sheet }) => sheetRow(part, sheet)),
    ),
  ];
};

const sheetRow = ({ id, stock, thickness }: SheetPart, box: Extent): PartsListRow => {
  const size = `${decimal(extentWidth(box), 2)} x ${decimal(extentHeight(box), 2)} mm`;
  return {
    section: "sheets",
    count: 1,
    part: stock.id,
    title: `${materialWords(stock)}, ${decimal(thickness, 2)} mm, ${size}`,
    use: id,
  };
};

/** Bare metal has no colour of its own. */
const materialWords = ({ colour, material }: StockDesign): string =>
  colour === material ? material : `${colour} ${material}`;

const layerRows = ({ layout }: PanelForPack): readonly PartsListRow[] =>
  layout.layers.flatMap((layer) =>
    gathered(
      "other layers",
      layerNeeds(layer).map((need) => ({ ...need, count: 1, use: layer.id })),
    ),
  );

const layerNeeds = ({ design }: LayerLayout): readonly Pick<Need, "part" | "title">[] => {
  switch (design.kind) {
    case "spacer": {
      const { print, depth, lighting } = design;
      const spacer = { part: print, title: `printed spacer, ${decimal(depth, 2)} mm deep` };
      if (lighting === null) return [spacer];
      return [spacer, { part: lighting.strip, title: `lamps, circuit ${lighting.circuit}` }];
    }
    case "tray":
      return design.boards.map(({ board: part }) => ({ part, title: "board on the tray" }));
    case "sheet":
    case "air":
      return [];
  }
};

const spareRows = ({ design, catalogue }: PanelForPack): readonly PartsListRow[] =>
  gathered(
    "spares",
    design.spares.map(({ part, count }) => ({
      part,
      count,
      title: catalogue.parts.get(part)?.title ?? titleOf(part, catalogue),
      use: "spare",
    })),
  );
