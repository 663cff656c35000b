/** Style of the record's own parts, for screen and paper. */
export const RECORD_STYLE = `
dl.lines { margin: 0.4rem 0; } dl.lines div { display: flex; gap: 0.6rem; break-inside: avoid; } dl.lines dt { flex: 0 0 8.5em; font-weight: 700; } dl.lines dd { margin: 0; min-width: 0; overflow-wrap: anywhere; }
h1, h2, h3, p, li, td, th, figcaption { overflow-wrap: break-word; } code { font-family: ui-monospace, monospace; font-size: 0.95em; overflow-wrap: anywhere; }
.words td, .words th { text-align: left; overflow-wrap: anywhere; min-width: 4.2em; } .words .short { white-space: nowrap; overflow-wrap: normal; min-width: 0; } .wide { overflow-x: auto; } .entry { border-top: 1px solid #181818; padding-top: 0.2rem; margin-top: 0.9rem; } .entry h3 { margin-top: 0.3rem; } h4 { font-size: 1rem; margin: 0.6rem 0 0.2rem; }
.signed, .unsigned { border-left: 4px solid #181818; padding: 0.1rem 0.7rem; margin: 0.5rem 0; break-inside: avoid; } .unsigned { border-left-style: dashed; } .verdict { font-size: 1.1rem; font-weight: 700; }
.photos { display: flex; flex-wrap: wrap; gap: 0.8rem; } .photos figure { flex: 0 1 16rem; margin: 0.4rem 0; } .photos img { display: block; max-width: 100%; height: auto; border: 1px solid #181818; }
tr.decides { font-weight: 700; }
.by-hand th { width: 38%; } .by-hand td { border-bottom: 1.5px solid #181818; height: 2.4rem; } .blank { white-space: nowrap; }
.label { border: 2px dashed #181818; padding: 0.5rem 0.8rem; max-width: 25rem; break-inside: avoid; } .label h3 { margin: 0; } .label td, .label th { padding: 0.1rem 0.4rem 0.1rem 0; }
@media print { .wide { overflow: visible; } thead { display: table-header-group; } .maps figure { break-inside: avoid; } .photos figure { flex-basis: 5.4cm; } .photos img { max-height: 6.5cm; width: auto; } .label { width: 95mm; max-width: none; font-size: 8.5pt; } h3, h4, .verdict { break-after: avoid; } .entry dl { break-before: avoid; } }
`;
