// Where the page begins: puts the bench on it and opens what it is served with, else the demo.

import { render } from "preact";
import { Bench } from "./bench.tsx";
import { takeDrops } from "./dropped-files.ts";
import { takeFileKeys } from "./files/file-keys.ts";
import { openFirst } from "./files/opening.ts";
import { keepRecovery } from "./files/recovery.ts";

const page = document.getElementById("page");
if (page !== null) {
  render(<Bench />, page);
  takeDrops();
  takeFileKeys();
  keepRecovery();
  void openFirst();
}
