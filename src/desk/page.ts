import { defaultTheme } from "@univerjs/themes";
document.body.dataset.theme = Object.keys(defaultTheme).join(" ");
