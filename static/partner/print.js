// The button that prints the sheet.

const print = document.getElementById("print");
print.hidden = false;
print.addEventListener("click", () => window.print());
