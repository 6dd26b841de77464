/** The headings of the catalogue, in order: folder name under src/functions, and title. */
export const groups = [
  { name: "amounts", title: "Amounts: what a quantity of oxygen is" },
  { name: "site", title: "Site: what the place does to a plant" },
  { name: "making", title: "Making: when and how much a plant makes" },
  { name: "holding", title: "Holding: what stays in a vessel" },
  { name: "transferring", title: "Transferring: what a fill costs" },
  { name: "cylinders", title: "Cylinders: compressed gas" },
  { name: "patients", title: "Patients: flow at the bedside" },
  { name: "demand", title: "Demand: how much, how many at once" },
  { name: "stock", title: "Stock: what to keep and when to order" },
  { name: "plan", title: "Plan: day by day" },
  { name: "power", title: "Power: electricity and fuel" },
  { name: "service", title: "Service: what is due when" },
  { name: "safety", title: "Safety: oxygen in a room" },
  { name: "moving", title: "Moving: receive, drain, ship" },
  { name: "options", title: "Options: side by side" },
  { name: "records", title: "Records: trusting the sheet" },
] as const;
