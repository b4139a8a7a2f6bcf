// Where the page begins: puts the bench on it and opens the first example that was built in.

import { render } from "preact";
import { Bench } from "./bench.tsx";
import { takeDrops } from "./dropped-files.ts";
import { openFirstExample } from "./files/opening.ts";

const page = document.getElementById("page");
if (page !== null) {
  render(<Bench />, page);
  takeDrops();
  void openFirstExample();
}
