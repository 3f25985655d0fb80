<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>chargebench</name>
    <message>
      <source>  (and {count} more)</source>
      <translation>  (und {count} weitere)</translation>
    </message>
    <message>
      <source> (person, set_at)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source> 1 conflict: see the flags.</source>
      <translation> 1 Widerspruch: siehe Meldungen.</translation>
    </message>
    <message>
      <source> Above its critical temperature of {critical} it does not boil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source> Already there and replaced: {there}.</source>
      <translation> Schon vorhanden und wird ersetzt: {there}.</translation>
    </message>
    <message>
      <source> and </source>
      <translation> und </translation>
    </message>
    <message>
      <source> at the coldest part</source>
      <translation> an der kältesten Stelle</translation>
    </message>
    <message>
      <source> at {coldest}</source>
      <translation> bei {coldest}</translation>
    </message>
    <message>
      <source> Filled all the same: {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source> It needs a hose.</source>
      <translation> Dazu braucht es einen Schlauch.</translation>
    </message>
    <message>
      <source> Judged by {rule_set}.</source>
      <translation> Beurteilt nach {rule_set}.</translation>
    </message>
    <message>
      <source> None is set yet; set one first.</source>
      <translation> Es ist noch keines gesetzt; zuerst eines setzen.</translation>
    </message>
    <message>
      <source> on </source>
      <translation> an </translation>
    </message>
    <message>
      <source> On the new bench's computer choose the file at the first start. Letter {letter} is then given, which is recorded; use the file on one computer only.</source>
      <translation> Am Rechner des neuen Arbeitsplatzes die Datei beim ersten Start wählen. Der Buchstabe {letter} ist dann vergeben, was aufgezeichnet wird; die Datei nur an einem Rechner verwenden.</translation>
    </message>
    <message>
      <source> or </source>
      <translation> oder </translation>
    </message>
    <message>
      <source> Take in the file with them first, or hand over again from entry {missing}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source> The gauge did not move: make sure it is not at the end of its range.</source>
      <translation> Das Messgerät bewegte sich nicht: sicherstellen, dass es nicht am Ende seines Bereichs ist.</translation>
    </message>
    <message>
      <source> This figure is {marks_said}.</source>
      <translation> Diese Zahl ist {marks_said}.</translation>
    </message>
    <message>
      <source> What was there before is kept as {aside}.</source>
      <translation> Was vorher dort war, ist als {aside} aufgehoben.</translation>
    </message>
    <message>
      <source> {count} conflicts: see the flags.</source>
      <translation> {count} Widersprüche: siehe Meldungen.</translation>
    </message>
    <message>
      <source> {enough} would do.</source>
      <translation> {enough} würden reichen.</translation>
    </message>
    <message>
      <source> {known} entries were here already.</source>
      <translation> {known} Einträge waren schon hier.</translation>
    </message>
    <message>
      <source> · closed</source>
      <translation> · abgeschlossen</translation>
    </message>
    <message>
      <source>"Hg vac</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>"paper"</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>#7fd0d6</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>#e9eeea</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>#f1f2ec</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>#fdfdfa</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>#ff9d94</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>#ffb066</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>#ffffff</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>%(asctime)s %(message)s</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Add</source>
      <translation>&amp;Hinzufügen</translation>
    </message>
    <message>
      <source>&amp;Add a file…</source>
      <translation>&amp;Datei hinzufügen…</translation>
    </message>
    <message>
      <source>&amp;Back</source>
      <translation>&amp;Zurück</translation>
    </message>
    <message>
      <source>&amp;Back up</source>
      <translation>S&amp;ichern</translation>
    </message>
    <message>
      <source>&amp;Cancel</source>
      <translation>&amp;Abbrechen</translation>
    </message>
    <message>
      <source>&amp;Chart</source>
      <translation>&amp;Diagramm</translation>
    </message>
    <message>
      <source>&amp;Clear</source>
      <translation>&amp;Leeren</translation>
    </message>
    <message>
      <source>&amp;Close</source>
      <translation>S&amp;chließen</translation>
    </message>
    <message>
      <source>&amp;Cylinders</source>
      <translation>&amp;Flaschen</translation>
    </message>
    <message>
      <source>&amp;Decant</source>
      <translation>&amp;Umfüllen</translation>
    </message>
    <message>
      <source>&amp;Decimal mark</source>
      <translation>&amp;Dezimalzeichen</translation>
    </message>
    <message>
      <source>&amp;Due dates</source>
      <translation>&amp;Fälligkeiten</translation>
    </message>
    <message>
      <source>&amp;Equipment</source>
      <translation>&amp;Anlage</translation>
    </message>
    <message>
      <source>&amp;Find</source>
      <translation>&amp;Suchen</translation>
    </message>
    <message>
      <source>&amp;Go back to this backup</source>
      <translation>&amp;Zu dieser Sicherung zurück</translation>
    </message>
    <message>
      <source>&amp;Instruments</source>
      <translation>&amp;Messgeräte</translation>
    </message>
    <message>
      <source>&amp;Isolated now</source>
      <translation>Jetzt abgesp&amp;errt</translation>
    </message>
    <message>
      <source>&amp;Join a shop…</source>
      <translation>Werkstatt bei&amp;treten…</translation>
    </message>
    <message>
      <source>&amp;Keep records here</source>
      <translation>Aufzeichnungen &amp;hier führen</translation>
    </message>
    <message>
      <source>&amp;Leak rates</source>
      <translation>&amp;Leckraten</translation>
    </message>
    <message>
      <source>&amp;Look at the sample</source>
      <translation>&amp;Beispiel ansehen</translation>
    </message>
    <message>
      <source>&amp;Make equipment</source>
      <translation>A&amp;nlage anlegen</translation>
    </message>
    <message>
      <source>&amp;Make your shop</source>
      <translation>&amp;Werkstatt anlegen</translation>
    </message>
    <message>
      <source>&amp;New</source>
      <translation>&amp;Neu</translation>
    </message>
    <message>
      <source>&amp;New cylinder</source>
      <translation>&amp;Neue Flasche</translation>
    </message>
    <message>
      <source>&amp;New job</source>
      <translation>&amp;Neuer Auftrag</translation>
    </message>
    <message>
      <source>&amp;New one</source>
      <translation>&amp;Neues</translation>
    </message>
    <message>
      <source>&amp;New {kind}</source>
      <translation>&amp;Neu: {kind}</translation>
    </message>
    <message>
      <source>&amp;Passphrase…</source>
      <translation>&amp;Kennwort…</translation>
    </message>
    <message>
      <source>&amp;Paste</source>
      <translation>&amp;Einfügen</translation>
    </message>
    <message>
      <source>&amp;Period</source>
      <translation>&amp;Zeitraum</translation>
    </message>
    <message>
      <source>&amp;PIN or passphrase</source>
      <translation>&amp;PIN oder Kennwort</translation>
    </message>
    <message>
      <source>&amp;Port at this bench</source>
      <translation>&amp;Anschluss an diesem Arbeitsplatz</translation>
    </message>
    <message>
      <source>&amp;Present one</source>
      <translation>&amp;Bisheriges</translation>
    </message>
    <message>
      <source>&amp;Print…</source>
      <translation>Dr&amp;ucken…</translation>
    </message>
    <message>
      <source>&amp;Reading</source>
      <translation>&amp;Ablesung</translation>
    </message>
    <message>
      <source>&amp;Reason of the visit</source>
      <translation>&amp;Grund des Besuchs</translation>
    </message>
    <message>
      <source>&amp;Register</source>
      <translation>&amp;Verzeichnis</translation>
    </message>
    <message>
      <source>&amp;Rescue into a new file…</source>
      <translation>In eine neue Datei &amp;retten…</translation>
    </message>
    <message>
      <source>&amp;Save</source>
      <translation>&amp;Speichern</translation>
    </message>
    <message>
      <source>&amp;Save as PDF…</source>
      <translation>Als PDF &amp;speichern…</translation>
    </message>
    <message>
      <source>&amp;Set</source>
      <translation>&amp;Setzen</translation>
    </message>
    <message>
      <source>&amp;Settled</source>
      <translation>&amp;Geklärt</translation>
    </message>
    <message>
      <source>&amp;Start job</source>
      <translation>Auftrag &amp;beginnen</translation>
    </message>
    <message>
      <source>&amp;Table</source>
      <translation>&amp;Tabelle</translation>
    </message>
    <message>
      <source>&amp;Take in…</source>
      <translation>Über&amp;nehmen…</translation>
    </message>
    <message>
      <source>&amp;Take the line away</source>
      <translation>Zeile weg&amp;nehmen</translation>
    </message>
    <message>
      <source>&amp;Try again</source>
      <translation>Noch einmal &amp;versuchen</translation>
    </message>
    <message>
      <source>&amp;Two things</source>
      <translation>&amp;Zwei Dinge</translation>
    </message>
    <message>
      <source>&amp;Unaccounted</source>
      <translation>&amp;Ungeklärt</translation>
    </message>
    <message>
      <source>&amp;Unit, if it sends none</source>
      <translation>&amp;Einheit, wenn keine kommt</translation>
    </message>
    <message>
      <source>&amp;Unlock</source>
      <translation>&amp;Entsperren</translation>
    </message>
    <message>
      <source>&amp;Verify</source>
      <translation>&amp;Prüfen</translation>
    </message>
    <message>
      <source>&amp;Weigh</source>
      <translation>&amp;Wiegen</translation>
    </message>
    <message>
      <source>&amp;What</source>
      <translation>&amp;Was</translation>
    </message>
    <message>
      <source>&amp;What is known</source>
      <translation>&amp;Was bekannt ist</translation>
    </message>
    <message>
      <source>&amp;What it shows</source>
      <translation>&amp;Was es zeigt</translation>
    </message>
    <message>
      <source>&amp;Work in the rescued file</source>
      <translation>&amp;In der geretteten Datei arbeiten</translation>
    </message>
    <message>
      <source>&amp;Write it</source>
      <translation>&amp;Schreiben</translation>
    </message>
    <message>
      <source>*.jpg *.jpeg *.png *.webp *.tif *.tiff *.gif</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>*.json</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>*.toml</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>+ speaks for it, − against it, · tells nothing. Arrow keys give the reason.</source>
      <translation>+ spricht dafür, − dagegen, · sagt nichts. Pfeiltasten nennen den Grund.</translation>
    </message>
    <message>
      <source>, and {count} more such pairs</source>
      <translation>, und {count} weitere solche Paare</translation>
    </message>
    <message>
      <source>, at the earliest {earliest}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>, but {would} would have seen a steady one of this size: look for one that opens only running, hot or cold</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>, entries {map}</source>
      <translation>, Einträge {map}</translation>
    </message>
    <message>
      <source>, from surfaces</source>
      <translation>, von Oberflächen</translation>
    </message>
    <message>
      <source>, last {reading} after {at}</source>
      <translation>, zuletzt {reading} nach {at}</translation>
    </message>
    <message>
      <source>, last {text} after {minutes:g} min</source>
      <translation>, zuletzt {text} nach {minutes:g} min</translation>
    </message>
    <message>
      <source>, limit {value_of}</source>
      <translation>, Grenze {value_of}</translation>
    </message>
    <message>
      <source>, not firm yet</source>
      <translation>, noch nicht sicher</translation>
    </message>
    <message>
      <source>, not refillable</source>
      <translation>, nicht wiederbefüllbar</translation>
    </message>
    <message>
      <source>, not yet firm</source>
      <translation>, noch nicht sicher</translation>
    </message>
    <message>
      <source>, only {chosen}</source>
      <translation>, nur {chosen}</translation>
    </message>
    <message>
      <source>, recorded {when}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>, reversed</source>
      <translation>, storniert</translation>
    </message>
    <message>
      <source>, such as “{such_as}”</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>, {from_backups} of them from backups</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>-12.5 °C or 9 F</source>
      <translation>-12.5 °C oder 9 F</translation>
    </message>
    <message>
      <source>-4 inHg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>0 bar(g)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>0 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>0.1 bar(g)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>0.5 bar(g)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>0.5 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>1 day</source>
      <translation>1 Tag</translation>
    </message>
    <message>
      <source>1 maker's figure</source>
      <translation>1 Wert des Herstellers</translation>
    </message>
    <message>
      <source>1 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>1 of 2</source>
      <translation>1 von 2</translation>
    </message>
    <message>
      <source>1 reading</source>
      <translation>1 Ablesung</translation>
    </message>
    <message>
      <source>1/4 in SAE flare, left-hand</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>10 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>10 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>10.180 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>1013 hPa or 29.92 inHg</source>
      <translation>1013 hPa oder 29.92 inHg</translation>
    </message>
    <message>
      <source>12 m² or 130 ft²</source>
      <translation>12 m² oder 130 ft²</translation>
    </message>
    <message>
      <source>12 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>12.430 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>12.5 L or 0.4 ft³</source>
      <translation>12.5 L oder 0.4 ft³</translation>
    </message>
    <message>
      <source>13.5 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>14.9 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>15 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>150 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>160 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>2 bar</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>2 calculated from components</source>
      <translation>2 aus Bauteilen berechnet</translation>
    </message>
    <message>
      <source>20 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>20 min or 1 h 30 min</source>
      <translation>20 min oder 1 h 30 min</translation>
    </message>
    <message>
      <source>25 bar(g)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>26.2 lb</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>29 psi</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>3 actual weight</source>
      <translation>3 wirkliches Gewicht</translation>
    </message>
    <message>
      <source>3 g/yr</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>3 g/yr or 0.1 oz/yr</source>
      <translation>3 g/yr oder 0.1 oz/yr</translation>
    </message>
    <message>
      <source>3 or 2.5</source>
      <translation>3 oder 2.5</translation>
    </message>
    <message>
      <source>3.0 oz or 85 g</source>
      <translation>3.0 oz oder 85 g</translation>
    </message>
    <message>
      <source>3.9 oz, 1 lb 2.5 oz or 110 g</source>
      <translation>3.9 oz, 1 lb 2.5 oz oder 110 g</translation>
    </message>
    <message>
      <source>30 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>300 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>320 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>350 micron</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>36 in</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>36 in, 1/4 in or 1.5 m</source>
      <translation>36 in, 1/4 in oder 1.5 m</translation>
    </message>
    <message>
      <source>4 established range</source>
      <translation>4 ermittelter Bereich</translation>
    </message>
    <message>
      <source>4.8 mm or 3/16 in</source>
      <translation>4.8 mm oder 3/16 in</translation>
    </message>
    <message>
      <source>40 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>400 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>420 micron</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>4312.5 g or 9 lb 8.1 oz</source>
      <translation>4312.5 g oder 9 lb 8.1 oz</translation>
    </message>
    <message>
      <source>45 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>5 g/yr</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>5 K or 9 F</source>
      <translation>5 K oder 9 F</translation>
    </message>
    <message>
      <source>5 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>5 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>6 K, or 5 to 8 K</source>
      <translation>6 K, oder 5 bis 8 K</translation>
    </message>
    <message>
      <source>68 psig, 4.7 bar(g), -10 inHg, 500 micron or 66 Pa</source>
      <translation>68 psig, 4.7 bar(g), -10 inHg, 500 micron oder 66 Pa</translation>
    </message>
    <message>
      <source>7.83 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>7.85 kg or 17 lb 5 oz</source>
      <translation>7.85 kg oder 17 lb 5 oz</translation>
    </message>
    <message>
      <source>8.6 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>80 % at 25 °C</source>
      <translation>80 % bei 25 °C</translation>
    </message>
    <message>
      <source>9.125 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>9.210 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>90 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>9600 8N1, stable ST</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>; did you mean “{near}”?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>; gross at most {gross_limit}</source>
      <translation>; brutto höchstens {gross_limit}</translation>
    </message>
    <message>
      <source>; it has not been searched for</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>; known are: {known}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>; no search made so far could rule it out</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>; signing asks for the passphrase</source>
      <translation>; Abzeichnen verlangt das Kennwort</translation>
    </message>
    <message>
      <source>; “{typed}” is a unit of {known}</source>
      <translation>; „{typed}“ ist eine Einheit für {known}</translation>
    </message>
    <message>
      <source>; “{typed}” is not a unit known here</source>
      <translation>; „{typed}“ ist hier keine bekannte Einheit</translation>
    </message>
    <message>
      <source>&lt;br&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&lt;s&gt;Entry {was_number}, {kind_words} by {named}, {happened_at}&lt;/s&gt; &lt;b&gt;reversed&lt;/b&gt; by entry {reversal_number}, {named_2}, {happened_at_2}: {reason}</source>
      <translation>&lt;s&gt;Eintrag {was_number}, {kind_words} von {named}, {happened_at}&lt;/s&gt; &lt;b&gt;storniert&lt;/b&gt; durch Eintrag {reversal_number}, {named_2}, {happened_at_2}: {reason}</translation>
    </message>
    <message>
      <source>[area]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[current]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[density]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[Errno</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[length]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[mass]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[mass] / [substance]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[mass] / [time]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[mass] / [volume]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[pressure]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[pressure] * [volume] / [time]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[pressure] / [time]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[temperature]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[time]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[volume]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a 36 in hose of 4.8 mm bore, for none is given at the weigh-in</source>
      <translation>ein 36-in-Schlauch mit 4.8 mm, denn beim Einwiegen ist keiner angegeben</translation>
    </message>
    <message>
      <source>a bench with entries has its shop</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A blocked condenser would raise it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A box at its set point may still run too long to hold it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A chain of hashes shows that what is recorded was not changed afterwards; it can not show that what was typed was true.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a charge</source>
      <translation>eine Füllmenge</translation>
    </message>
    <message>
      <source>a charge has at least one line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A checked scale in good order is under the recovery cylinder.</source>
      <translation>Eine geprüfte Waage in gutem Zustand steht unter der Absaugflasche.</translation>
    </message>
    <message>
      <source>a cold spot in the liquid line or drier</source>
      <translation>eine kalte Stelle in Flüssigkeitsleitung oder Trockner</translation>
    </message>
    <message>
      <source>A cold spot is where the liquid is throttled.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A compressor that leaves is evacuated first; its shell is heated electrically if at all.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a current</source>
      <translation>ein Strom</translation>
    </message>
    <message>
      <source>A cylinder comes in: what it weighs now and who it came from.</source>
      <translation>Eine Flasche kommt herein: was sie jetzt wiegt und von wem sie kam.</translation>
    </message>
    <message>
      <source>A cylinder's content leaves the shop.</source>
      <translation>Der Inhalt einer Flasche verlässt die Werkstatt.</translation>
    </message>
    <message>
      <source>a date such as 2024-07-15</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A decision is on two different ids, under the id of their pair.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A decision on two ids of one register was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A dirty condenser shifts temperatures, not much the subcooling.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A dry powder or carbon dioxide extinguisher stands within reach.</source>
      <translation>Ein Pulver- oder Kohlendioxidlöscher steht griffbereit.</translation>
    </message>
    <message>
      <source>a floor area</source>
      <translation>eine Bodenfläche</translation>
    </message>
    <message>
      <source>a form with register picks needs an open shop</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A further bench is begun as a file. A bench that works on the server itself is let in by the shop's owner with: chargebench join-shop.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A gas detector made for this gas is on where the gas would gather, checked in clean air, its alarm at the exposure limit and not at the flammable one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A gas detector that can not itself ignite the gas is on at floor height, checked in clean air, its alarm no higher than the share of the lower limit the rule set names.</source>
      <translation>Ein Gaswarngerät, das das Gas selbst nicht zünden kann, ist in Bodenhöhe an, in sauberer Luft geprüft, sein Alarm höchstens beim Anteil der unteren Grenze, den das Regelwerk nennt.</translation>
    </message>
    <message>
      <source>a height</source>
      <translation>eine Höhe</translation>
    </message>
    <message>
      <source>a height of release</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A job</source>
      <translation>Ein Auftrag</translation>
    </message>
    <message>
      <source>A job is opened on an equipment.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A job is opened on an equipment; choose one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A job number that begins with {bench}- was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A leak below {leak:.2g} mbar L/s of nitrogen can not be excluded.</source>
      <translation>Ein Leck unter {leak:.2g} mbar L/s Stickstoff ist nicht auszuschließen.</translation>
    </message>
    <message>
      <source>A leak below {leak} can not be excluded</source>
      <translation>Ein Leck unter {leak} ist nicht auszuschließen</translation>
    </message>
    <message>
      <source>A leak below {micron:.1f} micron/min ({pascal:.2f} Pa/min) can not be excluded</source>
      <translation>Ein Leck unter {micron:.1f} micron/min ({pascal:.2f} Pa/min) ist nicht auszuschließen</translation>
    </message>
    <message>
      <source>A leak is possible</source>
      <translation>Ein Leck ist möglich</translation>
    </message>
    <message>
      <source>a length</source>
      <translation>eine Länge</translation>
    </message>
    <message>
      <source>a lifted valve seldom reseats</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A line of a chain file has at most {line_most} bytes and {parts_most} brackets.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a list</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a loss per year</source>
      <translation>ein Verlust im Jahr</translation>
    </message>
    <message>
      <source>a lower flammable limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a mass</source>
      <translation>eine Masse</translation>
    </message>
    <message>
      <source>a mixture with {held}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A new bench begins with every entry; name no other bench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A non-refillable cylinder is never filled again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a number</source>
      <translation>eine Zahl</translation>
    </message>
    <message>
      <source>A number without a unit known here; say in the settings which unit it has.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A partial restriction does not show here.</source>
      <translation>Eine teilweise Verengung zeigt sich hier nicht.</translation>
    </message>
    <message>
      <source>A password for {login} was expected; nothing was done.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a percentage</source>
      <translation>ein Prozentsatz</translation>
    </message>
    <message>
      <source>a person</source>
      <translation>eine Person</translation>
    </message>
    <message>
      <source>A PIN or passphrase of at least four characters. It is not kept itself, only what can check it; that it was set is recorded.</source>
      <translation>Eine PIN oder ein Kennwort mit mindestens vier Zeichen. Aufgehoben wird nur, womit es sich prüfen lässt; dass es gesetzt wurde, wird aufgezeichnet.</translation>
    </message>
    <message>
      <source>a pressure</source>
      <translation>ein Druck</translation>
    </message>
    <message>
      <source>a refrigerant</source>
      <translation>ein Kältemittel</translation>
    </message>
    <message>
      <source>A register row holds text only.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A respirator for this gas is at hand, the way out is free, and nobody works alone.</source>
      <translation>Ein Atemschutz für dieses Gas ist zur Hand, der Weg hinaus ist frei, niemand arbeitet allein.</translation>
    </message>
    <message>
      <source>A restriction downstream may hold back little.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A restriction would hold liquid back.</source>
      <translation>Eine Verengung würde Flüssigkeit stauen.</translation>
    </message>
    <message>
      <source>A restriction would lower the boiling temperature.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A reversal needs a reason.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A reversal of entry {number} turns its transfers round, all of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a room volume</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A row of one of {registers} with an id was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A row of the table {table} can not be used.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A row's id of letters, digits, dots and dashes was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a rule set's last tolerance fits every equipment</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A running fan does not move air through dirt.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A running fan does not move air through ice or past a blocked grille.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A scale of {enough} resolution would decide.</source>
      <translation>Eine Waage mit {enough} Auflösung würde entscheiden.</translation>
    </message>
    <message>
      <source>a scale reading</source>
      <translation>eine Anzeige der Waage</translation>
    </message>
    <message>
      <source>A sealed system was topped up without weighing what was in it. Recover and weigh in the nameplate charge.</source>
      <translation>Ein geschlossenes System wurde nachgefüllt, ohne zu wiegen, was darin war. Absaugen und die Füllmenge des Typenschilds einwiegen.</translation>
    </message>
    <message>
      <source>A search without a find</source>
      <translation>Eine Suche ohne Fund</translation>
    </message>
    <message>
      <source>A signature stays unlocked for</source>
      <translation>Eine Unterschrift bleibt entsperrt für</translation>
    </message>
    <message>
      <source>A small overcharge does not show here.</source>
      <translation>Eine kleine Überfüllung zeigt sich hier nicht.</translation>
    </message>
    <message>
      <source>A small shortage does not show here.</source>
      <translation>Ein kleiner Mangel zeigt sich hier nicht.</translation>
    </message>
    <message>
      <source>a start reading is needed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A starved coil boils at a lower temperature.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A starved coil would boil colder.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A steady leak was large enough: {figures}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A stored value is of a kind this program never writes, so not all could be checked: {problem}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a technician</source>
      <translation>Techniker</translation>
    </message>
    <message>
      <source>a temperature</source>
      <translation>eine Temperatur</translation>
    </message>
    <message>
      <source>a temperature difference</source>
      <translation>eine Temperaturdifferenz</translation>
    </message>
    <message>
      <source>A test under {minutes_least:g} min tells too little.</source>
      <translation>Eine Probe unter {minutes_least:g} min sagt zu wenig.</translation>
    </message>
    <message>
      <source>A text file of two columns; it can be dropped here, too.</source>
      <translation>Eine Textdatei mit zwei Spalten; man kann sie auch hierher ziehen.</translation>
    </message>
    <message>
      <source>a text holds a character that can not be stored (NUL). Type it again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a time span</source>
      <translation>eine Zeitspanne</translation>
    </message>
    <message>
      <source>A vacuum hold does not prove tightness; the pressure test does.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve may fail without changing it much.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve may hunt around the right figure.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve may still overfeed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve stuck open overfeeds.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve stuck open, or a loose bulb, overfeeds.</source>
      <translation>Ein offen klemmendes Ventil oder ein loser Fühler überflutet.</translation>
    </message>
    <message>
      <source>A valve that holds its superheat works.</source>
      <translation>Ein Ventil, das seine Überhitzung hält, arbeitet.</translation>
    </message>
    <message>
      <source>A valve that opens too little holds liquid back in the condenser.</source>
      <translation>Ein Ventil, das zu wenig öffnet, staut Flüssigkeit im Verflüssiger.</translation>
    </message>
    <message>
      <source>A valve that opens too little lowers the boiling temperature.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve that opens too little starves the evaporator.</source>
      <translation>Ein Ventil, das zu wenig öffnet, lässt den Verdampfer hungern.</translation>
    </message>
    <message>
      <source>A valve that overfeeds lowers it, one that starves raises it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve that overfeeds raises the boiling temperature.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve that starves feeds the inlet only.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve that stays shut feeds nothing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a volume</source>
      <translation>ein Volumen</translation>
    </message>
    <message>
      <source>A&amp;cts</source>
      <translation>Handlun&amp;gen</translation>
    </message>
    <message>
      <source>About</source>
      <translation>Betrifft</translation>
    </message>
    <message>
      <source>about</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>absolute</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>accept</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Accuracy in % of reading</source>
      <translation>Genauigkeit in % der Anzeige</translation>
    </message>
    <message>
      <source>act</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Add a line</source>
      <translation>Zeile hinzufügen</translation>
    </message>
    <message>
      <source>Add a line to {label}</source>
      <translation>Zeile zu {label} hinzufügen</translation>
    </message>
    <message>
      <source>Add these readings</source>
      <translation>Diese Ablesungen hinzufügen</translation>
    </message>
    <message>
      <source>Added: {added}.</source>
      <translation>Nachgefüllt: {added}.</translation>
    </message>
    <message>
      <source>Address</source>
      <translation>Anschrift</translation>
    </message>
    <message>
      <source>address</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>afplay</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>After</source>
      <translation>Nachher</translation>
    </message>
    <message>
      <source>after</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>after {moment}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>against</source>
      <translation>dagegen</translation>
    </message>
    <message>
      <source>Against the nameplate</source>
      <translation>Gegen das Typenschild</translation>
    </message>
    <message>
      <source>against {value_of}</source>
      <translation>gegen {value_of}</translation>
    </message>
    <message>
      <source>agrees</source>
      <translation>stimmt</translation>
    </message>
    <message>
      <source>air conditioning</source>
      <translation>Klima</translation>
    </message>
    <message>
      <source>Air movement</source>
      <translation>Luftbewegung</translation>
    </message>
    <message>
      <source>Air onto the condenser</source>
      <translation>Luft auf den Verflüssiger</translation>
    </message>
    <message>
      <source>Air over evaporating</source>
      <translation>Luft über Verdampfung</translation>
    </message>
    <message>
      <source>air over evaporating</source>
      <translation>Luft über Verdampfung</translation>
    </message>
    <message>
      <source>air pressure</source>
      <translation>Luftdruck</translation>
    </message>
    <message>
      <source>Air pressure here</source>
      <translation>Luftdruck hier</translation>
    </message>
    <message>
      <source>all</source>
      <translation>alle</translation>
    </message>
    <message>
      <source>all jobs</source>
      <translation>alle Aufträge</translation>
    </message>
    <message>
      <source>All of this can be changed later; each change is recorded.</source>
      <translation>All das lässt sich später ändern; jede Änderung wird aufgezeichnet.</translation>
    </message>
    <message>
      <source>all the time</source>
      <translation>dauernd</translation>
    </message>
    <message>
      <source>All visible and accessible parts searched</source>
      <translation>Alle sichtbaren und zugänglichen Teile abgesucht</translation>
    </message>
    <message>
      <source>All {count}</source>
      <translation>Alle {count}</translation>
    </message>
    <message>
      <source>All {count} (F8)</source>
      <translation>Alle {count} (F8)</translation>
    </message>
    <message>
      <source>All {listed} places of a {kind} were searched.</source>
      <translation>Alle {listed} Stellen ({kind}) wurden abgesucht.</translation>
    </message>
    <message>
      <source>also line-tap valves left on</source>
      <translation>auch angelassene Anstechventile</translation>
    </message>
    <message>
      <source>Alt+1 2 3 areas</source>
      <translation>Alt+1 2 3 Bereiche</translation>
    </message>
    <message>
      <source>Alt+Left</source>
      <translation>Alt+Links</translation>
    </message>
    <message>
      <source>Alt+{place}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Alt+← jobs</source>
      <translation>Alt+← Aufträge</translation>
    </message>
    <message>
      <source>ambient</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ammonia</source>
      <translation>Ammoniak</translation>
    </message>
    <message>
      <source>amp|amps|ampere</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>An absolute pressure can not be negative; got {text}.</source>
      <translation>Ein absoluter Druck kann nicht negativ sein; eingegeben: {text}.</translation>
    </message>
    <message>
      <source>An address such as postgresql://login@server/database was expected</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>an air pressure</source>
      <translation>ein Luftdruck</translation>
    </message>
    <message>
      <source>an area</source>
      <translation>eine Fläche</translation>
    </message>
    <message>
      <source>an entry</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>an entry between two heads is not there</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>an entry has a kind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>An entry is too large to be handed over. {at_most}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>An entry “{kind}” names its job.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>an equipment</source>
      <translation>eine Anlage</translation>
    </message>
    <message>
      <source>An evaporator fed enough liquid speaks against too little reaching it.</source>
      <translation>Ein ausreichend versorgter Verdampfer spricht dagegen, dass zu wenig ankommt.</translation>
    </message>
    <message>
      <source>An even thin frost lets air through.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>An expansion valve hides a shortage until vapour reaches it.</source>
      <translation>Ein Expansionsventil verdeckt einen Mangel, bis Dampf es erreicht.</translation>
    </message>
    <message>
      <source>An expansion valve hides an overcharge too.</source>
      <translation>Ein Expansionsventil verdeckt auch eine Überfüllung.</translation>
    </message>
    <message>
      <source>An invented shop with jobs, cylinders and records to walk through; nothing you do there touches your own.</source>
      <translation>Eine erfundene Werkstatt mit Aufträgen, Flaschen und Aufzeichnungen zum Durchgehen; nichts davon berührt Ihre eigene.</translation>
    </message>
    <message>
      <source>an object</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>an officer</source>
      <translation>Beauftragter</translation>
    </message>
    <message>
      <source>anchors</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>and the ledger, in quadrature</source>
      <translation>und das Bestandsbuch, quadratisch addiert</translation>
    </message>
    <message>
      <source>and {more} more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Annualizing</source>
      <translation>Hochgerechnet</translation>
    </message>
    <message>
      <source>annualizing</source>
      <translation>Hochrechnung</translation>
    </message>
    <message>
      <source>annualizing, the higher</source>
      <translation>Hochrechnung, der höhere Wert</translation>
    </message>
    <message>
      <source>Another &amp;copy…</source>
      <translation>Andere &amp;Kopie…</translation>
    </message>
    <message>
      <source>another bench is recording about the same thing. Do it again in a moment</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>another bench recorded about the same thing at the same moment. Do it again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Another entry stands here under its id.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Another job stands here as {number}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>another program holds it locked. Close that program and do it again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>another program is writing to it. Close that window or tool and do it again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>another rule makes it impossible in time</source>
      <translation>eine andere Vorschrift macht es rechtzeitig unmöglich</translation>
    </message>
    <message>
      <source>Answers</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Any use.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>aplay</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>area</source>
      <translation>Fläche</translation>
    </message>
    <message>
      <source>Area detector</source>
      <translation>Raumwarngerät</translation>
    </message>
    <message>
      <source>arrangement</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Arrived</source>
      <translation>Angekommen</translation>
    </message>
    <message>
      <source>arrived</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>as entered</source>
      <translation>wie eingetragen</translation>
    </message>
    <message>
      <source>As found</source>
      <translation>Wie vorgefunden</translation>
    </message>
    <message>
      <source>as found</source>
      <translation>wie vorgefunden</translation>
    </message>
    <message>
      <source>as found today</source>
      <translation>wie heute vorgefunden</translation>
    </message>
    <message>
      <source>As left</source>
      <translation>Wie verlassen</translation>
    </message>
    <message>
      <source>as left</source>
      <translation>wie verlassen</translation>
    </message>
    <message>
      <source>As read</source>
      <translation>Wie gelesen</translation>
    </message>
    <message>
      <source>As the system</source>
      <translation>Wie das System</translation>
    </message>
    <message>
      <source>As typed</source>
      <translation>Wie eingegeben</translation>
    </message>
    <message>
      <source>As&amp;k it by</source>
      <translation>Abfrage &amp;mit</translation>
    </message>
    <message>
      <source>ascii</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>asked</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Asked for on</source>
      <translation>Beantragt am</translation>
    </message>
    <message>
      <source>assumed</source>
      <translation>angenommen</translation>
    </message>
    <message>
      <source>assumed content</source>
      <translation>angenommener Inhalt</translation>
    </message>
    <message>
      <source>At least three readings at clearly different times are needed.</source>
      <translation>Es braucht mindestens drei Ablesungen zu deutlich verschiedenen Zeiten.</translation>
    </message>
    <message>
      <source>atm</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>atm(a)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>atmosphere</source>
      <translation>Atmosphäre</translation>
    </message>
    <message>
      <source>Attached, entry {number}.</source>
      <translation>Angehängt, Eintrag {number}.</translation>
    </message>
    <message>
      <source>Authorisation or claim number</source>
      <translation>Freigabe- oder Antragsnummer</translation>
    </message>
    <message>
      <source>Average loss over {days} days</source>
      <translation>Mittlerer Verlust über {days} Tage</translation>
    </message>
    <message>
      <source>azeotrope</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Bac&amp;kups…</source>
      <translation>Siche&amp;rungen…</translation>
    </message>
    <message>
      <source>Back</source>
      <translation>Zurück</translation>
    </message>
    <message>
      <source>Backed up: {kept}.</source>
      <translation>Gesichert: {kept}.</translation>
    </message>
    <message>
      <source>Backups of {shop}.</source>
      <translation>Sicherungen von {shop}.</translation>
    </message>
    <message>
      <source>Backups, newest first</source>
      <translation>Sicherungen, neueste zuerst</translation>
    </message>
    <message>
      <source>Bakery freezer</source>
      <translation>Bäckereifroster</translation>
    </message>
    <message>
      <source>Bakery, Quay Street</source>
      <translation>Bäckerei, Kaistraße</translation>
    </message>
    <message>
      <source>balance</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>balance-below-zero</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ball-valves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bar</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bar(a)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bar(g)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bara|barabs|bar(abs)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>barg|bargauge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>barometer</source>
      <translation>Barometer</translation>
    </message>
    <message>
      <source>batch</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Batch or reclaim number</source>
      <translation>Chargen- oder Aufarbeitungsnummer</translation>
    </message>
    <message>
      <source>Before</source>
      <translation>Vorher</translation>
    </message>
    <message>
      <source>before</source>
      <translation>vorher</translation>
    </message>
    <message>
      <source>Before any cut or flame: refrigerant out, evacuated, purged with dry nitrogen, evacuated again.</source>
      <translation>Vor jedem Schnitt und jeder Flamme: Kältemittel heraus, evakuiert, mit trockenem Stickstoff gespült, noch einmal evakuiert.</translation>
    </message>
    <message>
      <source>Before the circuit is opened</source>
      <translation>Bevor der Kreislauf geöffnet wird</translation>
    </message>
    <message>
      <source>Before the circuit is opened: the area, the people, the tools.</source>
      <translation>Bevor der Kreislauf geöffnet wird: der Bereich, die Leute, das Werkzeug.</translation>
    </message>
    <message>
      <source>before {moment}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>begin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>BEGIN RAISE EXCEPTION USING MESSAGE = TG_TABLE_NAME || ' is append-only'; END</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Behind ice no pattern can be read: defrost first.</source>
      <translation>Hinter Eis ist kein Bild zu lesen: zuerst abtauen.</translation>
    </message>
    <message>
      <source>Bench</source>
      <translation>Werkbank</translation>
    </message>
    <message>
      <source>bench</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Bench display</source>
      <translation>Großanzeige</translation>
    </message>
    <message>
      <source>bench named</source>
      <translation>Arbeitsplatz benannt</translation>
    </message>
    <message>
      <source>Bench scale</source>
      <translation>Tischwaage</translation>
    </message>
    <message>
      <source>Bench {bench} had seen entries of bench {bench_2} up to {last}; here they are known up to {known}. Take in the chain of bench {bench_2} first, or have bench {bench} hand over every chain it knows.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Bench {bench} has entries 1 to {last} here; a number among them was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Bench {bench} has no entries here; known are: {known}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bench {bench}: entries {first} to {last}</source>
      <translation>Arbeitsplatz {bench}: Einträge {first} bis {last}</translation>
    </message>
    <message>
      <source>bench {name}: {number} entries</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bench-named</source>
      <translation>Arbeitsplatz benannt</translation>
    </message>
    <message>
      <source>benches</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Benches, people, backups</source>
      <translation>Arbeitsplätze, Personen, Sicherungen</translation>
    </message>
    <message>
      <source>beside</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>big</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Book the difference</source>
      <translation>Differenz buchen</translation>
    </message>
    <message>
      <source>Book the difference with a reason, or leave it to be found out.</source>
      <translation>Die Differenz mit einem Grund buchen oder zur Klärung lassen.</translation>
    </message>
    <message>
      <source>booked: {reason}</source>
      <translation>gebucht: {reason}</translation>
    </message>
    <message>
      <source>border</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>both ends</source>
      <translation>beide Enden</translation>
    </message>
    <message>
      <source>Both ends of the transfer are {source}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bottom</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>box</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>box at -20 °C</source>
      <translation>Kühlraum bei -20 °C</translation>
    </message>
    <message>
      <source>Box temperature</source>
      <translation>Raumtemperatur im Kühlgut</translation>
    </message>
    <message>
      <source>box temperature</source>
      <translation>Kühlraumtemperatur</translation>
    </message>
    <message>
      <source>breaks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>brought to full charge</source>
      <translation>auf volle Füllmenge gebracht</translation>
    </message>
    <message>
      <source>bubble</source>
      <translation>Siedelinie</translation>
    </message>
    <message>
      <source>Bubble [{pressure}]</source>
      <translation>Siedelinie [{pressure}]</translation>
    </message>
    <message>
      <source>Bubble [{temperature}]</source>
      <translation>Siedelinie [{temperature}]</translation>
    </message>
    <message>
      <source>bubble and dew are one</source>
      <translation>Siede- und Taulinie fallen zusammen</translation>
    </message>
    <message>
      <source>bubble pressure</source>
      <translation>Siededruck</translation>
    </message>
    <message>
      <source>bubbles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>budget</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bug in chargebench %s</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>By p&amp;ressure</source>
      <translation>Nach Dr&amp;uck</translation>
    </message>
    <message>
      <source>By te&amp;mperature</source>
      <translation>Nach Te&amp;mperatur</translation>
    </message>
    <message>
      <source>By the ledger</source>
      <translation>Nach dem Bestandsbuch</translation>
    </message>
    <message>
      <source>bytes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>C&amp;hange</source>
      <translation>Än&amp;dern</translation>
    </message>
    <message>
      <source>C&amp;hoose file…</source>
      <translation>Datei &amp;wählen…</translation>
    </message>
    <message>
      <source>C&amp;hoose folder…</source>
      <translation>&amp;Ordner wählen…</translation>
    </message>
    <message>
      <source>C&amp;lose job</source>
      <translation>Auftrag abs&amp;chließen</translation>
    </message>
    <message>
      <source>C&amp;ylinder</source>
      <translation>&amp;Flasche</translation>
    </message>
    <message>
      <source>C-014; a scanner types here</source>
      <translation>C-014; ein Scanner tippt hier</translation>
    </message>
    <message>
      <source>cabinet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>calendar</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Calibrated</source>
      <translation>Kalibriert</translation>
    </message>
    <message>
      <source>calibrated</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>calibration</source>
      <translation>Kalibrierung</translation>
    </message>
    <message>
      <source>Calibration due</source>
      <translation>Kalibrierung fällig</translation>
    </message>
    <message>
      <source>Callable[P, R]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Calls</source>
      <translation>Anrufe</translation>
    </message>
    <message>
      <source>calls</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>can only be read by this login: it records for no bench. The shop's owner lets a bench in with: chargebench join-shop.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Can&amp;cel</source>
      <translation>Ab&amp;brechen</translation>
    </message>
    <message>
      <source>Cancelled. The job reports are not complete.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cancelled; nothing of this file was taken in.</source>
      <translation>Abgebrochen; nichts aus dieser Datei wurde übernommen.</translation>
    </message>
    <message>
      <source>Capillary tube or expansion valve</source>
      <translation>Kapillarrohr oder Expansionsventil</translation>
    </message>
    <message>
      <source>caption</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>carbon dioxide</source>
      <translation>Kohlendioxid</translation>
    </message>
    <message>
      <source>carried out</source>
      <translation>ausgeführt</translation>
    </message>
    <message>
      <source>case-coils</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Category</source>
      <translation>Kategorie</translation>
    </message>
    <message>
      <source>category</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cause</source>
      <translation>Ursache</translation>
    </message>
    <message>
      <source>cause</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cautions</source>
      <translation>Vorsicht</translation>
    </message>
    <message>
      <source>centimetre|centimeter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>certificate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Certificate number</source>
      <translation>Zertifikatsnummer</translation>
    </message>
    <message>
      <source>certificate number</source>
      <translation>Zertifikatsnummer</translation>
    </message>
    <message>
      <source>Certificate of the employer</source>
      <translation>Zertifikat des Arbeitgebers</translation>
    </message>
    <message>
      <source>Certificate of the facility</source>
      <translation>Zertifikat des Betriebs</translation>
    </message>
    <message>
      <source>Certificate type</source>
      <translation>Art des Zertifikats</translation>
    </message>
    <message>
      <source>Certified by</source>
      <translation>Zertifiziert von</translation>
    </message>
    <message>
      <source>chafed tubes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Chain files (*.chain);;All files (*)</source>
      <translation>Kettendateien (*.chain);;Alle Dateien (*)</translation>
    </message>
    <message>
      <source>chains</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Change</source>
      <translation>Ändern</translation>
    </message>
    <message>
      <source>change the registers and the shop's settings</source>
      <translation>die Verzeichnisse und Einstellungen der Werkstatt ändern</translation>
    </message>
    <message>
      <source>Change what the register says of this cylinder</source>
      <translation>Ändern, was das Verzeichnis zu dieser Flasche sagt</translation>
    </message>
    <message>
      <source>changed</source>
      <translation>geändert</translation>
    </message>
    <message>
      <source>Charge</source>
      <translation>Füllmenge</translation>
    </message>
    <message>
      <source>charge</source>
      <translation>Füllmenge</translation>
    </message>
    <message>
      <source>Charge against the most for this floor area ({key} form)</source>
      <translation>Füllung gegen das Meiste für diese Bodenfläche (Form {key})</translation>
    </message>
    <message>
      <source>Charge limit, {title}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Charge tolerance</source>
      <translation>Toleranz der Füllmenge</translation>
    </message>
    <message>
      <source>Charge, recovery and every gram in between</source>
      <translation>Füllung, Absaugung und jedes Gramm dazwischen</translation>
    </message>
    <message>
      <source>charge-limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>charge-over-limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>chargebench</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>chargebench_job: Expected a version number up to {version}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>chargebench_job: This file is of version {version}; this program reads up to version {version_2}. Take it in with a newer chargebench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Charged</source>
      <translation>Gefüllt</translation>
    </message>
    <message>
      <source>charged</source>
      <translation>gefüllt</translation>
    </message>
    <message>
      <source>Charged without a decay test on record. Recover, evacuate and prove it dry and tight.</source>
      <translation>Gefüllt, ohne dass eine Vakuumstandprobe aufgezeichnet ist. Absaugen, evakuieren und trocken und dicht nachweisen.</translation>
    </message>
    <message>
      <source>Charged without a pressure test on record. Test with dry nitrogen first.</source>
      <translation>Gefüllt, ohne dass eine Druckprobe aufgezeichnet ist. Zuerst mit trockenem Stickstoff prüfen.</translation>
    </message>
    <message>
      <source>Charged {text}; what was in before was not weighed</source>
      <translation>Gefüllt {text}; was vorher darin war, wurde nicht gewogen</translation>
    </message>
    <message>
      <source>check</source>
      <translation>prüfen</translation>
    </message>
    <message>
      <source>check after repair</source>
      <translation>Kontrolle nach der Reparatur</translation>
    </message>
    <message>
      <source>Checked for leaks after charging, and again before leaving.</source>
      <translation>Nach dem Füllen und noch einmal vor dem Gehen auf Lecks geprüft.</translation>
    </message>
    <message>
      <source>checklist</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>checkpoint</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>checks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>choice</source>
      <translation>Auswahl</translation>
    </message>
    <message>
      <source>Choose a photo</source>
      <translation>Ein Foto wählen</translation>
    </message>
    <message>
      <source>Choose the port it is plugged into.</source>
      <translation>Den Anschluss wählen, an dem es steckt.</translation>
    </message>
    <message>
      <source>chronic leaker report</source>
      <translation>Bericht über dauernd undichte Anlage</translation>
    </message>
    <message>
      <source>Circuit</source>
      <translation>Kreislauf</translation>
    </message>
    <message>
      <source>circuit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>classes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>clean</source>
      <translation>sauber</translation>
    </message>
    <message>
      <source>Clean it first: until then the other readings mislead.</source>
      <translation>Zuerst reinigen: bis dahin führen die anderen Ablesungen irre.</translation>
    </message>
    <message>
      <source>climate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Close</source>
      <translation>Schließen</translation>
    </message>
    <message>
      <source>close</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>close a job or open it again</source>
      <translation>einen Auftrag abschließen oder wieder öffnen</translation>
    </message>
    <message>
      <source>Close off the nitrogen</source>
      <translation>Stickstoff absperren</translation>
    </message>
    <message>
      <source>closed</source>
      <translation>abgeschlossen</translation>
    </message>
    <message>
      <source>closed jobs</source>
      <translation>abgeschlossene Aufträge</translation>
    </message>
    <message>
      <source>Closed off at</source>
      <translation>Abgesperrt um</translation>
    </message>
    <message>
      <source>closed-job</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>cm**2</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>cm2|sq cm</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>CO2 equivalent</source>
      <translation>CO2-Äquivalent</translation>
    </message>
    <message>
      <source>Coils and valves of each case or room</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>coldest</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Coldest part</source>
      <translation>Kälteste Stelle</translation>
    </message>
    <message>
      <source>color</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>combined</source>
      <translation>zusammen</translation>
    </message>
    <message>
      <source>comfort cooling</source>
      <translation>Komfortklima</translation>
    </message>
    <message>
      <source>comma</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Commercial or industrial process refrigeration, or absorption units.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>commercial refrigeration</source>
      <translation>Gewerbekälte</translation>
    </message>
    <message>
      <source>COMMON, the maker's tolerance as typed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Company certificate</source>
      <translation>Betriebszertifikat</translation>
    </message>
    <message>
      <source>company certification number</source>
      <translation>Zertifizierungsnummer des Betriebs</translation>
    </message>
    <message>
      <source>Complaint</source>
      <translation>Beanstandung</translation>
    </message>
    <message>
      <source>complaint</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>components</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Components searched</source>
      <translation>Abgesuchte Bauteile</translation>
    </message>
    <message>
      <source>Composition by mass</source>
      <translation>Zusammensetzung nach Masse</translation>
    </message>
    <message>
      <source>Compression ratio</source>
      <translation>Verdichtungsverhältnis</translation>
    </message>
    <message>
      <source>compression-ratio</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>compressor</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Compressor current</source>
      <translation>Verdichterstrom</translation>
    </message>
    <message>
      <source>compressor current</source>
      <translation>Verdichterstrom</translation>
    </message>
    <message>
      <source>Compressor runs</source>
      <translation>Verdichter läuft</translation>
    </message>
    <message>
      <source>Compressor works</source>
      <translation>Verdichter arbeitet</translation>
    </message>
    <message>
      <source>Compressor: joints, terminals, shell seam</source>
      <translation>Verdichter: Verbindungen, Klemmen, Gehäusenaht</translation>
    </message>
    <message>
      <source>Computed by</source>
      <translation>Berechnet mit</translation>
    </message>
    <message>
      <source>Concentration limit for people</source>
      <translation>Konzentrationsgrenze für Menschen</translation>
    </message>
    <message>
      <source>Condenser</source>
      <translation>Verflüssiger</translation>
    </message>
    <message>
      <source>condenser</source>
      <translation>Verflüssiger</translation>
    </message>
    <message>
      <source>Condenser fan</source>
      <translation>Verflüssigerlüfter</translation>
    </message>
    <message>
      <source>condenser fan</source>
      <translation>Verflüssigerlüfter</translation>
    </message>
    <message>
      <source>condenser surface</source>
      <translation>Verflüssigeroberfläche</translation>
    </message>
    <message>
      <source>Condenser surface, middle</source>
      <translation>Verflüssigeroberfläche, Mitte</translation>
    </message>
    <message>
      <source>Condenser: return bends, inlet, outlet</source>
      <translation>Verflüssiger: Bögen, Eintritt, Austritt</translation>
    </message>
    <message>
      <source>Condensing over ambient</source>
      <translation>Verflüssigung über Umgebung</translation>
    </message>
    <message>
      <source>condensing over ambient</source>
      <translation>Verflüssigung über Umgebung</translation>
    </message>
    <message>
      <source>Condensing pressure</source>
      <translation>Verflüssigungsdruck</translation>
    </message>
    <message>
      <source>condensing pressure</source>
      <translation>Verflüssigungsdruck</translation>
    </message>
    <message>
      <source>condensing split</source>
      <translation>Abstand der Verflüssigung</translation>
    </message>
    <message>
      <source>conflict</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>conflict settled</source>
      <translation>Widerspruch geklärt</translation>
    </message>
    <message>
      <source>conflicts</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>connect</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Connecting this hose costs {hose}, {share:.1f} % of the charge; surface temperatures cost nothing.</source>
      <translation>Diesen Schlauch anzuschließen kostet {hose}, {share:.1f} % der Füllung; Oberflächentemperaturen kosten nichts.</translation>
    </message>
    <message>
      <source>constant</source>
      <translation>konstant</translation>
    </message>
    <message>
      <source>content</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Contents</source>
      <translation>Inhalt</translation>
    </message>
    <message>
      <source>contents</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>CoolProp {coolprop_version}, curves fitted</source>
      <translation>CoolProp {coolprop_version}, Kurven angepasst</translation>
    </message>
    <message>
      <source>Copy it again from where it came from, without opening it in an editor.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>corrodes where it stands in water</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Could it have been seen?</source>
      <translation>Hätte man es sehen können?</translation>
    </message>
    <message>
      <source>could not have seen it</source>
      <translation>hätte es nicht sehen können</translation>
    </message>
    <message>
      <source>Count</source>
      <translation>Anzahl</translation>
    </message>
    <message>
      <source>count</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Counts</source>
      <translation>Zählt</translation>
    </message>
    <message>
      <source>counts</source>
      <translation>zählt</translation>
    </message>
    <message>
      <source>coverage</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>crimped or brazed ends</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>critical</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ctrl+,</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ctrl+, shop and rules</source>
      <translation>Strg+, Werkstatt und Regeln</translation>
    </message>
    <message>
      <source>Ctrl+,: name, address, units, rule set, how it looks here</source>
      <translation>Strg+,: Name, Anschrift, Einheiten, Regelwerk, Aussehen hier</translation>
    </message>
    <message>
      <source>Ctrl+=</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ctrl+F find</source>
      <translation>Strg+F suchen</translation>
    </message>
    <message>
      <source>Ctrl+L lock or unlock</source>
      <translation>Strg+L sperren oder entsperren</translation>
    </message>
    <message>
      <source>Ctrl+L; Ctrl+Shift+L sets a passphrase</source>
      <translation>Strg+L; Strg+Umschalt+L setzt ein Kennwort</translation>
    </message>
    <message>
      <source>Ctrl+N</source>
      <translation>Strg+N</translation>
    </message>
    <message>
      <source>Ctrl+N new job</source>
      <translation>Strg+N neuer Auftrag</translation>
    </message>
    <message>
      <source>Ctrl+P label</source>
      <translation>Strg+P Aufkleber</translation>
    </message>
    <message>
      <source>Ctrl+P print</source>
      <translation>Strg+P drucken</translation>
    </message>
    <message>
      <source>Ctrl+P: label with QR code, one or all that are listed</source>
      <translation>Strg+P: Aufkleber mit QR-Code, einer oder alle aufgelisteten</translation>
    </message>
    <message>
      <source>Ctrl+P: label with QR code, statement of a hand-over</source>
      <translation>Strg+P: Aufkleber mit QR-Code, Übergabeerklärung</translation>
    </message>
    <message>
      <source>Ctrl+P: report, checklist, statement; with preview</source>
      <translation>Strg+P: Bericht, Prüfliste, Erklärung; mit Vorschau</translation>
    </message>
    <message>
      <source>Ctrl+P: the usage log</source>
      <translation>Strg+P: die Verbrauchsliste</translation>
    </message>
    <message>
      <source>Ctrl+P: with preview, or as PDF</source>
      <translation>Strg+P: mit Vorschau oder als PDF</translation>
    </message>
    <message>
      <source>Ctrl+Plus, Ctrl+Minus text size</source>
      <translation>Strg+Plus, Strg+Minus Schriftgröße</translation>
    </message>
    <message>
      <source>Ctrl+R reverse</source>
      <translation>Strg+R stornieren</translation>
    </message>
    <message>
      <source>Ctrl+R: take it back by a further entry, with a reason</source>
      <translation>Strg+R: durch einen weiteren Eintrag mit Begründung zurücknehmen</translation>
    </message>
    <message>
      <source>Ctrl+Return</source>
      <translation>Strg+Enter</translation>
    </message>
    <message>
      <source>Ctrl+Return record</source>
      <translation>Strg+Enter aufzeichnen</translation>
    </message>
    <message>
      <source>Ctrl+Return sign</source>
      <translation>Strg+Enter abzeichnen</translation>
    </message>
    <message>
      <source>Ctrl+Shift+Delete</source>
      <translation>Strg+Umschalt+Entf</translation>
    </message>
    <message>
      <source>Ctrl+Shift+Delete take a line away</source>
      <translation>Strg+Umschalt+Entf Zeile wegnehmen</translation>
    </message>
    <message>
      <source>Ctrl+Shift+Delete takes a line away</source>
      <translation>Strg+Umschalt+Entf nimmt eine Zeile weg</translation>
    </message>
    <message>
      <source>Ctrl+Shift+Delete: the chosen cylinder is not counted yet</source>
      <translation>Strg+Umschalt+Entf: die gewählte Flasche ist noch nicht gezählt</translation>
    </message>
    <message>
      <source>Ctrl+Shift+L passphrase</source>
      <translation>Strg+Umschalt+L Kennwort</translation>
    </message>
    <message>
      <source>Ctrl+Shift+N</source>
      <translation>Strg+Umschalt+N</translation>
    </message>
    <message>
      <source>Ctrl+Shift+N not needed</source>
      <translation>Strg+Umschalt+N nicht nötig</translation>
    </message>
    <message>
      <source>Ctrl+Shift+P photos</source>
      <translation>Strg+Umschalt+P Fotos</translation>
    </message>
    <message>
      <source>Ctrl+Shift+P; or drag a photo here</source>
      <translation>Strg+Umschalt+P; oder ein Foto hierher ziehen</translation>
    </message>
    <message>
      <source>Ctrl+Shift+Return</source>
      <translation>Strg+Umschalt+Enter</translation>
    </message>
    <message>
      <source>Ctrl+Shift+Return close job</source>
      <translation>Strg+Umschalt+Enter Auftrag abschließen</translation>
    </message>
    <message>
      <source>Ctrl+T now</source>
      <translation>Strg+T jetzt</translation>
    </message>
    <message>
      <source>Ctrl+T writes now</source>
      <translation>Strg+T schreibt jetzt</translation>
    </message>
    <message>
      <source>Ctrl+T writes today</source>
      <translation>Strg+T schreibt heute</translation>
    </message>
    <message>
      <source>Ctrl+V; a picture or a copied file</source>
      <translation>Strg+V; ein Bild oder eine kopierte Datei</translation>
    </message>
    <message>
      <source>Ctrl+Z undo</source>
      <translation>Strg+Z rückgängig</translation>
    </message>
    <message>
      <source>Ctrl+↑ ↓ steps</source>
      <translation>Strg+↑ ↓ Schritte</translation>
    </message>
    <message>
      <source>current</source>
      <translation>gültig</translation>
    </message>
    <message>
      <source>customer's room</source>
      <translation>Raum des Kunden</translation>
    </message>
    <message>
      <source>cycling</source>
      <translation>taktet</translation>
    </message>
    <message>
      <source>Cylinder</source>
      <translation>Flasche</translation>
    </message>
    <message>
      <source>cylinder</source>
      <translation>Flasche</translation>
    </message>
    <message>
      <source>Cylinder after</source>
      <translation>Flasche nachher</translation>
    </message>
    <message>
      <source>Cylinder before</source>
      <translation>Flasche vorher</translation>
    </message>
    <message>
      <source>Cylinder of flammable gas: left-hand valve thread and red band expected, label read, kept from heat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>cylinder on the scale</source>
      <translation>Flasche auf der Waage</translation>
    </message>
    <message>
      <source>Cylinder {cylinder} holds {mass_words} of {other}; {refrigerant} does not go into it. Choose another cylinder, or register this one as mixed waste.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cylinder {cylinder} is registered for {registered}; {refrigerant} does not go into it. Choose another cylinder, or register this one as mixed waste.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cylinder {removeprefix} holds {mass_words} of {refrigerant} by the book; {mass_words_2} was to be taken. Put the cylinder on the scale, or correct the amount.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cylinder {thing} was overdrawn by two benches: with what bench {bench} handed over it stands at −{mass} of {refrigerant}. Put it on the scale, book the difference, then {settle}.</source>
      <translation>Aus Flasche {thing} haben zwei Arbeitsplätze zu viel entnommen: mit dem von Arbeitsplatz {bench} Übergebenen steht sie bei −{mass} {refrigerant}. Auf die Waage stellen, die Differenz buchen, dann {settle}.</translation>
    </message>
    <message>
      <source>cylinder, refrigerant, owner; a scanner types here</source>
      <translation>Flasche, Kältemittel, Eigentümer; ein Scanner tippt hier</translation>
    </message>
    <message>
      <source>cylinder-overfilled</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cylinders</source>
      <translation>Flaschen</translation>
    </message>
    <message>
      <source>Cylinders of the stock-take</source>
      <translation>Flaschen der Inventur</translation>
    </message>
    <message>
      <source>C|degC|deg C|celsius|ºC</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>d MMM yyyy</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Dark</source>
      <translation>Dunkel</translation>
    </message>
    <message>
      <source>dark</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>darwin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Data &amp;bits</source>
      <translation>Daten&amp;bits</translation>
    </message>
    <message>
      <source>Data bits</source>
      <translation>Datenbits</translation>
    </message>
    <message>
      <source>date</source>
      <translation>Datum</translation>
    </message>
    <message>
      <source>date and time</source>
      <translation>Datum und Zeit</translation>
    </message>
    <message>
      <source>Dated</source>
      <translation>Datiert</translation>
    </message>
    <message>
      <source>day</source>
      <translation>Tag</translation>
    </message>
    <message>
      <source>day|days</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ddd d MMM</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Decant</source>
      <translation>Umfüllen</translation>
    </message>
    <message>
      <source>decant</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>decanted</source>
      <translation>umgefüllt</translation>
    </message>
    <message>
      <source>decay</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Decay test</source>
      <translation>Vakuumstandprobe</translation>
    </message>
    <message>
      <source>decay test</source>
      <translation>Vakuumstandprobe</translation>
    </message>
    <message>
      <source>Decay test: {verdict}. {reason} {after}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Decay test: {verdict}{firm}. {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>decay-not-tight</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>decay-test-missing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Decides the recovery level of a machine.</source>
      <translation>Bestimmt den Absaugstand einer Maschine.</translation>
    </message>
    <message>
      <source>decimal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Decimal mark</source>
      <translation>Dezimalzeichen</translation>
    </message>
    <message>
      <source>decision</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>decommissioning</source>
      <translation>Außerbetriebnahme</translation>
    </message>
    <message>
      <source>defrosts a day</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>delete</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>delivered</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Dense suction gas would raise it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>density</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Density in</source>
      <translation>Dichte in</translation>
    </message>
    <message>
      <source>Depends on whether it starves or overfeeds.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Desk</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>destruction</source>
      <translation>Vernichtung</translation>
    </message>
    <message>
      <source>Detection system last checked</source>
      <translation>Leckerkennung zuletzt geprüft</translation>
    </message>
    <message>
      <source>detection-missing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Detector</source>
      <translation>Suchgerät</translation>
    </message>
    <message>
      <source>detector</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Detector checked after</source>
      <translation>Suchgerät nachher geprüft</translation>
    </message>
    <message>
      <source>Detector checked before</source>
      <translation>Suchgerät vorher geprüft</translation>
    </message>
    <message>
      <source>deterministic</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Deutsch</source>
      <translation>Deutsch</translation>
    </message>
    <message>
      <source>dew</source>
      <translation>Taulinie</translation>
    </message>
    <message>
      <source>Dew [{pressure}]</source>
      <translation>Taulinie [{pressure}]</translation>
    </message>
    <message>
      <source>Dew [{temperature}]</source>
      <translation>Taulinie [{temperature}]</translation>
    </message>
    <message>
      <source>dew pressure</source>
      <translation>Taudruck</translation>
    </message>
    <message>
      <source>Difference</source>
      <translation>Differenz</translation>
    </message>
    <message>
      <source>difference</source>
      <translation>Differenz</translation>
    </message>
    <message>
      <source>difference found by weighing</source>
      <translation>beim Wiegen gefundene Differenz</translation>
    </message>
    <message>
      <source>Differences</source>
      <translation>Differenzen</translation>
    </message>
    <message>
      <source>differs</source>
      <translation>weicht ab</translation>
    </message>
    <message>
      <source>dimensionless</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Dirt was seen.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Dirt, or too little air, keeps the heat in.</source>
      <translation>Schmutz oder zu wenig Luft hält die Wärme drin.</translation>
    </message>
    <message>
      <source>dirty</source>
      <translation>schmutzig</translation>
    </message>
    <message>
      <source>dirty condenser</source>
      <translation>schmutziger Verflüssiger</translation>
    </message>
    <message>
      <source>Discharge line</source>
      <translation>Druckleitung</translation>
    </message>
    <message>
      <source>Discharge line temperature</source>
      <translation>Temperatur der Druckleitung</translation>
    </message>
    <message>
      <source>discharge line temperature</source>
      <translation>Temperatur der Druckleitung</translation>
    </message>
    <message>
      <source>discharge-line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>disposal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>disposed of</source>
      <translation>entsorgt</translation>
    </message>
    <message>
      <source>document</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Document number</source>
      <translation>Belegnummer</translation>
    </message>
    <message>
      <source>does not count</source>
      <translation>zählt nicht</translation>
    </message>
    <message>
      <source>Done</source>
      <translation>Getan</translation>
    </message>
    <message>
      <source>done</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Done at</source>
      <translation>Getan am</translation>
    </message>
    <message>
      <source>done now</source>
      <translation>jetzt getan</translation>
    </message>
    <message>
      <source>Done so far, and why not in time</source>
      <translation>Bisher getan, und warum nicht rechtzeitig</translation>
    </message>
    <message>
      <source>done {done_on}</source>
      <translation>erledigt {done_on}</translation>
    </message>
    <message>
      <source>door open, fan at floor level</source>
      <translation>Tür offen, Lüfter am Boden</translation>
    </message>
    <message>
      <source>Door-frame heater loop</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>door-heater</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Doubt from {part} (k = 1)</source>
      <translation>Unsicherheit aus {part} (k = 1)</translation>
    </message>
    <message>
      <source>Doubt, line by line</source>
      <translation>Unsicherheit, Zeile für Zeile</translation>
    </message>
    <message>
      <source>Drain-pan loop</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>drain-pan-loop</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>draught</source>
      <translation>Luftzug</translation>
    </message>
    <message>
      <source>Draw {refrigerant} as liquid. {reason}</source>
      <translation>{refrigerant} als Flüssigkeit entnehmen. {reason}</translation>
    </message>
    <message>
      <source>Drawn</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Drawn as</source>
      <translation>Entnommen als</translation>
    </message>
    <message>
      <source>drier</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>drier drop</source>
      <translation>Abfall am Trockner</translation>
    </message>
    <message>
      <source>Drier, in</source>
      <translation>Trockner, Eintritt</translation>
    </message>
    <message>
      <source>Drier, out</source>
      <translation>Trockner, Austritt</translation>
    </message>
    <message>
      <source>drop</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Drop beyond temperature</source>
      <translation>Abfall über die Temperatur hinaus</translation>
    </message>
    <message>
      <source>dropped</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>drops</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>dry nitrogen</source>
      <translation>trockener Stickstoff</translation>
    </message>
    <message>
      <source>Dry nitrogen through a regulator and a relief valve; never oxygen or compressed air.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Dry nitrogen, regulated and relieved; never oxygen or air.</source>
      <translation>Trockener Stickstoff, mit Druckminderer und Sicherheitsventil; nie Sauerstoff oder Luft.</translation>
    </message>
    <message>
      <source>Dry on: break with nitrogen and pull again.</source>
      <translation>Weiter trocknen: mit Stickstoff brechen und noch einmal evakuieren.</translation>
    </message>
    <message>
      <source>Due</source>
      <translation>Fällig</translation>
    </message>
    <message>
      <source>due</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Due dates</source>
      <translation>Fälligkeiten</translation>
    </message>
    <message>
      <source>due dates</source>
      <translation>Fälligkeiten</translation>
    </message>
    <message>
      <source>Due on</source>
      <translation>Fällig am</translation>
    </message>
    <message>
      <source>due this month</source>
      <translation>diesen Monat fällig</translation>
    </message>
    <message>
      <source>due today</source>
      <translation>heute fällig</translation>
    </message>
    <message>
      <source>Due: {due}.</source>
      <translation>Fällig: {due}.</translation>
    </message>
    <message>
      <source>Duty</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>duty-overdue</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>E&amp;ntries</source>
      <translation>Ei&amp;nträge</translation>
    </message>
    <message>
      <source>E&amp;quipment</source>
      <translation>An&amp;lage</translation>
    </message>
    <message>
      <source>E&amp;xport…</source>
      <translation>E&amp;xportieren…</translation>
    </message>
    <message>
      <source>e.g. Nameplate</source>
      <translation>z. B. Typenschild</translation>
    </message>
    <message>
      <source>edition</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>effective</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>efforts</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>electronic detector</source>
      <translation>elektronisches Suchgerät</translation>
    </message>
    <message>
      <source>elevation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Employer</source>
      <translation>Arbeitgeber</translation>
    </message>
    <message>
      <source>employer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>end</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>End reading</source>
      <translation>Anzeige am Ende</translation>
    </message>
    <message>
      <source>Ended on {done_on}: {how}{ended}.</source>
      <translation>Beendet am {done_on}: {how}{ended}.</translation>
    </message>
    <message>
      <source>Ended: {ended}.</source>
      <translation>Beendet: {ended}.</translation>
    </message>
    <message>
      <source>ends</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>English</source>
      <translation>English</translation>
    </message>
    <message>
      <source>Enter open</source>
      <translation>Enter öffnen</translation>
    </message>
    <message>
      <source>Entries</source>
      <translation>Einträge</translation>
    </message>
    <message>
      <source>entries</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>entries checked</source>
      <translation>Einträge geprüft</translation>
    </message>
    <message>
      <source>Entries of this bench itself ({bench}) came back in a file: its records had been set back to an older copy. {look}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>entries written</source>
      <translation>Einträge geschrieben</translation>
    </message>
    <message>
      <source>Entries {bench_number} to {number} of bench {name} are cut off: the head kept beside the chain is entry {number}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entries {first} to {upto} of bench {bench} can not be read{known}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entries {missing} to {upto} of bench {bench} are missing: the file begins at {first}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entries {number} to {bench_number} of bench {name} were added behind the head kept beside the chain.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry</source>
      <translation>Eintrag</translation>
    </message>
    <message>
      <source>entry</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>entry {bench}-{undone_number}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {checkpoint_number} of bench {bench} is not the one that stood when a head was kept ({kept_at}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {checkpoint_number} of bench {bench} stood when a head was kept ({kept_at}); entries {first} to {checkpoint_number} are gone.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {entry_number} ({kind}) is not reversed; record the right state as a new entry.</source>
      <translation>Eintrag {entry_number} ({kind}) wird nicht storniert; den richtigen Stand als neuen Eintrag aufzeichnen.</translation>
    </message>
    <message>
      <source>Entry {entry_number} reversed by entry {reversal_number}.</source>
      <translation>Eintrag {entry_number} storniert durch Eintrag {reversal_number}.</translation>
    </message>
    <message>
      <source>Entry {entry_number}, {kind_words} by {named}, {happened_at}</source>
      <translation>Eintrag {entry_number}, {kind_words} von {named}, {happened_at}</translation>
    </message>
    <message>
      <source>Entry {entry} reversed; {step} is open again.</source>
      <translation>Eintrag {entry} storniert; {step} ist wieder offen.</translation>
    </message>
    <message>
      <source>entry {entry}: {what}</source>
      <translation>Eintrag {entry}: {what}</translation>
    </message>
    <message>
      <source>Entry {first} of bench {bench} can not be read{known}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {last} of bench {name} stands out of its place.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {missing} of bench {bench} is missing: the file begins at {first}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} ({kind}) is not reversed; record the right state as a new entry.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} can not be read as an entry: {problem}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} does not follow the entry before it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} is already reversed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} is not of this period. Choose a longer one to go to it.</source>
      <translation>Eintrag {number} liegt nicht in diesem Zeitraum. Einen längeren wählen, um zu ihm zu gehen.</translation>
    </message>
    <message>
      <source>Entry {number} of bench {bench}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>entry {number} of bench {bench}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} of bench {bench} does not give its hash: it was changed after it was signed, or never was.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} of bench {bench} is another one here than in the file: one of the two chains is forged, or two computers record as bench {bench}. Nothing was taken in. Verify both, and keep this file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} of bench {name} is missing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} of bench {name} is not the one kept as its head.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} or one of its mass lines was changed: what is stored does not give its hash.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number}, {step}, {when}, {who}</source>
      <translation>Eintrag {number}, {step}, {when}, {who}</translation>
    </message>
    <message>
      <source>Entry {standing_number} already stands under this id with other content; nothing was recorded. Record a correction instead.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Equation</source>
      <translation>Gleichung</translation>
    </message>
    <message>
      <source>equation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Equipment</source>
      <translation>Anlage</translation>
    </message>
    <message>
      <source>equipment</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Equipment and cylinder are earthed before charging.</source>
      <translation>Anlage und Flasche sind vor dem Füllen geerdet.</translation>
    </message>
    <message>
      <source>Equipment is</source>
      <translation>Anlage ist</translation>
    </message>
    <message>
      <source>equipment on the scale</source>
      <translation>Anlage auf der Waage</translation>
    </message>
    <message>
      <source>Errand</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Esc</source>
      <translation>Esc</translation>
    </message>
    <message>
      <source>Esc back</source>
      <translation>Esc zurück</translation>
    </message>
    <message>
      <source>Esc close a panel</source>
      <translation>Esc schließt ein Feld</translation>
    </message>
    <message>
      <source>Esc; nothing is signed, what is typed stays</source>
      <translation>Esc; nichts wird abgezeichnet, Eingegebenes bleibt</translation>
    </message>
    <message>
      <source>Esc; what is counted stays here</source>
      <translation>Esc; Gezähltes bleibt hier</translation>
    </message>
    <message>
      <source>Esc; what is typed stays here</source>
      <translation>Esc; Eingegebenes bleibt hier</translation>
    </message>
    <message>
      <source>Estimated pair data</source>
      <translation>Geschätzte Paardaten</translation>
    </message>
    <message>
      <source>Estimated pair data: {each}.</source>
      <translation>Geschätzte Paardaten: {each}.</translation>
    </message>
    <message>
      <source>Evacuated and shut down.</source>
      <translation>Evakuiert und abgeschaltet.</translation>
    </message>
    <message>
      <source>evacuation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>evaporator</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>evaporator difference</source>
      <translation>Abstand der Verdampfung</translation>
    </message>
    <message>
      <source>Evaporator fan</source>
      <translation>Verdampferlüfter</translation>
    </message>
    <message>
      <source>evaporator fan</source>
      <translation>Verdampferlüfter</translation>
    </message>
    <message>
      <source>Evaporator surface, inlet</source>
      <translation>Verdampferoberfläche, Eintritt</translation>
    </message>
    <message>
      <source>evaporator surface, inlet</source>
      <translation>Verdampferoberfläche, Eintritt</translation>
    </message>
    <message>
      <source>Evaporator surface, outlet</source>
      <translation>Verdampferoberfläche, Austritt</translation>
    </message>
    <message>
      <source>evaporator surface, outlet</source>
      <translation>Verdampferoberfläche, Austritt</translation>
    </message>
    <message>
      <source>Evaporator: bends, plate, joints</source>
      <translation>Verdampfer: Bögen, Platte, Verbindungen</translation>
    </message>
    <message>
      <source>even</source>
      <translation>gerade</translation>
    </message>
    <message>
      <source>even over the whole coil</source>
      <translation>gleichmäßig über den ganzen Verdampfer</translation>
    </message>
    <message>
      <source>Every cylinder once over the scale. Scan or type its id and press Enter, type the reading and press Enter, take the next. What is typed is kept until you sign; a cylinder weighed again counts as weighed last. Another content on the label than in the register: type it behind the id, such as C-014 R600a.</source>
      <translation>Jede Flasche einmal über die Waage. Kennung scannen oder eingeben und Enter, Anzeige eingeben und Enter, die nächste nehmen. Eingegebenes bleibt bis zum Abzeichnen; eine noch einmal gewogene Flasche zählt wie zuletzt gewogen. Steht auf dem Aufkleber ein anderer Inhalt als im Verzeichnis: hinter die Kennung schreiben, etwa C-014 R600a.</translation>
    </message>
    <message>
      <source>Every entry is recomputed from what was signed, and compared.</source>
      <translation>Jeder Eintrag wird aus dem Abgezeichneten neu berechnet und verglichen.</translation>
    </message>
    <message>
      <source>Every fault on the list does this.</source>
      <translation>Jeder Fehler der Liste tut das.</translation>
    </message>
    <message>
      <source>every one, by number</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Every signature needs a passphrase</source>
      <translation>Jede Unterschrift braucht ein Kennwort</translation>
    </message>
    <message>
      <source>everything</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>everything recorded</source>
      <translation>alles Aufgezeichnete</translation>
    </message>
    <message>
      <source>evidence</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>exceedance</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expanded</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected</source>
      <translation>Erwartet</translation>
    </message>
    <message>
      <source>expected</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a chain file at {source}: {reason}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a chain file: its first line begins {decode}{version}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a chain file; this file is empty.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a chain file; {source} is none.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a cylinder of the register.</source>
      <translation>Erwartet wurde eine Flasche des Verzeichnisses.</translation>
    </message>
    <message>
      <source>Expected a cylinder of the register; got “{cylinder}”.</source>
      <translation>Erwartet wurde eine Flasche des Verzeichnisses; eingegeben: „{cylinder}“.</translation>
    </message>
    <message>
      <source>Expected a cylinder with its weight before and after.</source>
      <translation>Erwartet wurde eine Flasche mit Gewicht vorher und nachher.</translation>
    </message>
    <message>
      <source>Expected a cylinder; scan or type its id, then its weight.</source>
      <translation>Erwartet wurde eine Flasche; ihre Kennung scannen oder eingeben, dann ihr Gewicht.</translation>
    </message>
    <message>
      <source>Expected a date and time with its zone, such as 2026-03-04T08:10-05:00; got {got}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a date and time, such as 2026-11-25 14:30; got “{text}”.</source>
      <translation>Erwartet wurden Datum und Zeit, etwa 2026-11-25 14:30; eingegeben: „{text}“.</translation>
    </message>
    <message>
      <source>Expected a date as year-month-day, such as 2026-11-25, or nothing.</source>
      <translation>Erwartet wurde ein Datum als Jahr-Monat-Tag, etwa 2026-11-25, oder nichts.</translation>
    </message>
    <message>
      <source>Expected a date as year-month-day, such as 2026-11-25; got “{text}”.</source>
      <translation>Erwartet wurde ein Datum als Jahr-Monat-Tag, etwa 2026-11-25; eingegeben: „{text}“.</translation>
    </message>
    <message>
      <source>Expected a design pressure from the nameplate before a pressure test is planned.</source>
      <translation>Erwartet wurde ein Auslegungsdruck vom Typenschild, bevor eine Druckprobe geplant wird.</translation>
    </message>
    <message>
      <source>expected a finite number.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a folder that can be written; {problem}.</source>
      <translation>Erwartet wurde ein beschreibbarer Ordner; {problem}.</translation>
    </message>
    <message>
      <source>Expected a full charge above zero to reckon a leak rate.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a gauge pressure, such as 150 psig or 10 bar(g).</source>
      <translation>Erwartet wurde ein Überdruck, etwa 150 psig oder 10 bar(g).</translation>
    </message>
    <message>
      <source>Expected a height between -2000 m and 11000 m above sea level.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a job file at {path}: {reason}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a job file of at most {size_most:_} bytes; this one has {size:_}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a job file: an object that begins {"chargebench_job": 1.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a job file; this file is empty.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a job with a signed recovery of equipment that is disposed of or taken out of service.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a job, a shop, register rows or stock acts; there is none.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a last day that is not before the first.</source>
      <translation>Erwartet wurde ein letzter Tag, der nicht vor dem ersten liegt.</translation>
    </message>
    <message>
      <source>Expected a leak above zero; no test can prove that there is none.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a list [...]; got {named}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected a list.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a nameplate charge above zero, not {nameplate}; read it from the nameplate first.</source>
      <translation>Erwartet wurde eine Füllmenge des Typenschilds über null, nicht {nameplate}; zuerst vom Typenschild ablesen.</translation>
    </message>
    <message>
      <source>Expected a nameplate charge above zero.</source>
      <translation>Erwartet wurde eine Füllmenge des Typenschilds über null.</translation>
    </message>
    <message>
      <source>expected a number.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a person of the register; got “{person}”.</source>
      <translation>Erwartet wurde eine Person des Verzeichnisses; eingegeben: „{person}“.</translation>
    </message>
    <message>
      <source>Expected a PIN or passphrase of {shortest} to {longest} characters.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a pressure difference across the leak in the test.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a reason for the reversal.</source>
      <translation>Erwartet wurde ein Grund für die Stornierung.</translation>
    </message>
    <message>
      <source>Expected a reason to open a closed job again.</source>
      <translation>Erwartet wurde ein Grund, einen abgeschlossenen Auftrag wieder zu öffnen.</translation>
    </message>
    <message>
      <source>Expected a reason why this step is not needed.</source>
      <translation>Erwartet wurde ein Grund, warum dieser Schritt nicht nötig ist.</translation>
    </message>
    <message>
      <source>Expected a regulator and a relief device before pressure goes in.</source>
      <translation>Erwartet wurden Druckminderer und Sicherheitsventil, bevor Druck hineinkommt.</translation>
    </message>
    <message>
      <source>Expected a row of the register {register}; got “{row_id}”.</source>
      <translation>Erwartet wurde eine Zeile des Verzeichnisses {register}; eingegeben: „{row_id}“.</translation>
    </message>
    <message>
      <source>expected a row “other” for categories not named.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a row “{key}” in register.{register}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a row “{site}” in register.site.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a scale of the register.</source>
      <translation>Erwartet wurde eine Waage des Verzeichnisses.</translation>
    </message>
    <message>
      <source>Expected a scale of the register; choose the one that is used.</source>
      <translation>Erwartet wurde eine Waage des Verzeichnisses; die verwendete wählen.</translation>
    </message>
    <message>
      <source>Expected a scale of the register; got “{scale}”.</source>
      <translation>Erwartet wurde eine Waage des Verzeichnisses; eingegeben: „{scale}“.</translation>
    </message>
    <message>
      <source>Expected a stamped tare above zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a step above zero, and a range from low to high.</source>
      <translation>Erwartet wurde ein Schritt über null und ein Bereich von niedrig bis hoch.</translation>
    </message>
    <message>
      <source>Expected a step that gives at most {rows_most} rows; got {count}.</source>
      <translation>Erwartet wurde ein Schritt, der höchstens {rows_most} Zeilen gibt; es wären {count}.</translation>
    </message>
    <message>
      <source>expected a table of figures.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected a table of value, source, place and mark.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected a table with {identity}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected a table.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a tare in the register for {cylinder}; enter it first.</source>
      <translation>Erwartet wurde eine Tara für {cylinder} im Verzeichnis; zuerst eintragen.</translation>
    </message>
    <message>
      <source>Expected a temperature above absolute zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a temperature between −70 °C and 150 °C for the density of {name} gas.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a temperature of water between −80 °C and 200 °C.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a test pressure of at most {lowest}, the design pressure of the {side}; {planned} could burst it.</source>
      <translation>Erwartet wurde ein Prüfdruck von höchstens {lowest}, dem Auslegungsdruck: {side}; {planned} könnte sie bersten lassen.</translation>
    </message>
    <message>
      <source>Expected a test time above zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a time after the job was opened.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a time before the job was closed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a water capacity above zero, as stamped on the cylinder.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a water capacity as a mass of water or a volume.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected a whole number of day, month or year.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected absolute pressure and temperatures above zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected absolute pressures, none of them below zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected after the speed: stable MARK, moving MARK, unit UNIT, decimal comma or asked WORD, each once; got “{part}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected an absolute pressure above zero and up to 300 bar for nitrogen.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected an absolute pressure above zero and up to the dew pressure of {name}, {dew} at {celsius}; above it there is liquid.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected an absolute pressure above zero, such as 420 micron or 56 Pa.</source>
      <translation>Erwartet wurde ein absoluter Druck über null, etwa 420 micron oder 56 Pa.</translation>
    </message>
    <message>
      <source>Expected an absolute pressure between {low} and {high} for the boiling line of water.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected an absolute suction pressure above zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected an entry by which a cylinder's content was returned.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected an equipment of the register; got “{equipment}”.</source>
      <translation>Erwartet wurde eine Anlage des Verzeichnisses; eingegeben: „{equipment}“.</translation>
    </message>
    <message>
      <source>Expected an id of letters, digits, dots and dashes, such as {next_id}.</source>
      <translation>Erwartet wurde eine Kennung aus Buchstaben, Ziffern, Punkten und Strichen, etwa {next_id}.</translation>
    </message>
    <message>
      <source>Expected an id of the {kind} register; got “{typed}”. Press Down to see what there is, or to make a new one.</source>
      <translation>Erwartet wurde eine Kennung des Verzeichnisses {kind}; eingegeben: „{typed}“. Pfeil ab zeigt, was es gibt, oder legt Neues an.</translation>
    </message>
    <message>
      <source>Expected an id such as C-014 for each row.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected an object {{...}}; got {named}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected another cylinder than the one decanted from.</source>
      <translation>Erwartet wurde eine andere Flasche als die, aus der umgefüllt wird.</translation>
    </message>
    <message>
      <source>Expected at least one day since the last addition; additions of the same day for one leak are summed first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected at least one form.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected at least two readings, {example}; got {rows}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected at most {lines_most} readings; got {rows}. Keep each second or each fifth line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected at most {longest} characters; got {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected at most {most} characters; got {text}.</source>
      <translation>Erwartet wurden höchstens {most} Zeichen; es sind {text}.</translation>
    </message>
    <message>
      <source>Expected at most {most} lines; got {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected at the end</source>
      <translation>Am Ende erwartet</translation>
    </message>
    <message>
      <source>expected either mass or times_lfl.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected either “typed”, or “not_needed” with the reason.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected entry {last} of bench {bench}; entry {number} stands here.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected every step signed or set aside before closing; open: {waiting}.</source>
      <translation>Vor dem Abschließen müssen alle Schritte abgezeichnet oder zurückgestellt sein; offen: {waiting}.</translation>
    </message>
    <message>
      <source>Expected finite times and absolute pressures above zero; a gauge that shows 0 micron is below its range: enter the smallest figure it can show.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected how far either side is allowed, above zero.</source>
      <translation>Erwartet wurde, wie weit es je Seite abweichen darf, über null.</translation>
    </message>
    <message>
      <source>Expected how it was settled.</source>
      <translation>Erwartet wurde, wie er geklärt wurde.</translation>
    </message>
    <message>
      <source>Expected its weight.</source>
      <translation>Erwartet wurde ihr Gewicht.</translation>
    </message>
    <message>
      <source>Expected length and bore of the hose, or its volume; or no hose.</source>
      <translation>Erwartet wurden Länge und Durchmesser des Schlauchs oder sein Volumen; oder kein Schlauch.</translation>
    </message>
    <message>
      <source>Expected less than one {unit} in the {smaller} of {text}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected molar masses and viscosities above zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected more after than before; nothing was recovered.</source>
      <translation>Erwartet wurde nachher mehr als vorher; nichts wurde abgesaugt.</translation>
    </message>
    <message>
      <source>Expected one decimal mark in {text}; write 1234.5 or 1234,5, without marks between thousands.</source>
      <translation>Erwartet wurde ein Dezimalzeichen in {text}; 1234.5 oder 1234,5 schreiben, ohne Zeichen zwischen Tausendern.</translation>
    </message>
    <message>
      <source>Expected one number in {text}; spaces may only part thousands, as in 4 312.5.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected one of {called}; got “{words}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected one of: {choices}; got “{text}”.</source>
      <translation>Erwartet wurde eines von: {choices}; eingegeben: „{text}“.</translation>
    </message>
    <message>
      <source>Expected one of: {forms}; got {got}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected one of: {names}.</source>
      <translation>Erwartet wurde eines von: {names}.</translation>
    </message>
    <message>
      <source>Expected one {kind} or two, such as 5 to 8; got “{text}”.</source>
      <translation>Erwartet wurden ein oder zwei Werte ({kind}), etwa 5 bis 8; eingegeben: „{text}“.</translation>
    </message>
    <message>
      <source>Expected one {kind}, such as {example}; got {text}.</source>
      <translation>Erwartet wurde genau ein Wert ({kind}), etwa {example}; eingegeben: {text}.</translation>
    </message>
    <message>
      <source>Expected one {kind}, such as {example}; this is too long.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected pressures and densities above zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected refrigerant and charge at the nameplate first.</source>
      <translation>Erwartet wurden zuerst Kältemittel und Füllmenge beim Typenschild.</translation>
    </message>
    <message>
      <source>Expected somebody left who is of the shop, to keep its registers.</source>
      <translation>Es muss jemand der Werkstatt bleiben, der die Verzeichnisse führt.</translation>
    </message>
    <message>
      <source>Expected somebody who signs; choose a person first.</source>
      <translation>Erwartet wurde jemand, der abzeichnet; zuerst eine Person wählen.</translation>
    </message>
    <message>
      <source>Expected speed and frame of the line, such as {example}; got “{first}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected text in quotes{example}; got {named}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected text that can be seen; it holds the character {odd}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected text.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected the day it was last full, {last}, not to be after {on}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected the low-side design pressure too: the low side is the weaker one, and is under test unless it is shut off.</source>
      <translation>Erwartet wurde auch der Auslegungsdruck der Niederdruckseite: sie ist die schwächere und steht unter Prüfdruck, wenn sie nicht abgesperrt ist.</translation>
    </message>
    <message>
      <source>Expected the lower {kind} first, in the same unit as the higher.</source>
      <translation>Erwartet wurde zuerst der niedrigere Wert ({kind}), in derselben Einheit wie der höhere.</translation>
    </message>
    <message>
      <source>Expected the mass released; the nameplate's where not known.</source>
      <translation>Erwartet wurde die abgelassene Masse; die des Typenschilds, wo unbekannt.</translation>
    </message>
    <message>
      <source>Expected the pressure in the hose at disconnection.</source>
      <translation>Erwartet wurde der Druck im Schlauch beim Abnehmen.</translation>
    </message>
    <message>
      <source>Expected the reading it is of, or what it is in words.</source>
      <translation>Erwartet wurde, zu welcher Ablesung er gehört, oder was er in Worten ist.</translation>
    </message>
    <message>
      <source>Expected the reason of the difference that is to be booked.</source>
      <translation>Erwartet wurde der Grund der Differenz, die gebucht werden soll.</translation>
    </message>
    <message>
      <source>Expected the refrigerant at the nameplate first.</source>
      <translation>Erwartet wurde zuerst das Kältemittel beim Typenschild.</translation>
    </message>
    <message>
      <source>Expected the rule that allows this release.</source>
      <translation>Erwartet wurde die Regel, die dieses Ablassen erlaubt.</translation>
    </message>
    <message>
      <source>Expected the same new one twice. Type all anew.</source>
      <translation>Erwartet wurde zweimal dasselbe neue. Alles noch einmal eingeben.</translation>
    </message>
    <message>
      <source>Expected this field; it is missing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected two columns, time and reading, parted by tab, semicolon or comma, {example}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected what the photo shows, in at most {most} letters, such as: Nameplate.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected why the method changes: it may after taking a facility over.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected {kind} that is not negative; got {text}.</source>
      <translation>Erwartet wurde {kind}, nicht negativ; eingegeben: {text}.</translation>
    </message>
    <message>
      <source>Expected {kind} with its unit, such as {example}; got only {text}.</source>
      <translation>Erwartet wurde {kind} mit Einheit, etwa {example}; eingegeben ist nur {text}.</translation>
    </message>
    <message>
      <source>Expected {kind}, such as {example}; fractions are read only for lengths, in halves to 64ths of an inch.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected {kind}, such as {example}; got {text}.</source>
      <translation>Erwartet wurde {kind}, etwa {example}; eingegeben: {text}.</translation>
    </message>
    <message>
      <source>Expected {kind}, such as {example}; nothing was typed.</source>
      <translation>Erwartet wurde {kind}, etwa {example}; nichts wurde eingegeben.</translation>
    </message>
    <message>
      <source>Expected {kind}, such as {example}{but}.</source>
      <translation>Erwartet wurde {kind}, etwa {example}{but}.</translation>
    </message>
    <message>
      <source>expected {kind}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected {label}.</source>
      <translation>Erwartet: {label}.</translation>
    </message>
    <message>
      <source>Expected {label}; nothing is there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected {wanted} after than before; nothing was decanted.</source>
      <translation>Erwartet wurde nachher {wanted} als vorher; nichts wurde umgefüllt.</translation>
    </message>
    <message>
      <source>Expected {wanted} at the end than at the start; nothing was charged.</source>
      <translation>Erwartet wurde am Ende {wanted} als am Anfang; nichts wurde gefüllt.</translation>
    </message>
    <message>
      <source>Expected {what} above zero.</source>
      <translation>Erwartet wurde {what} über null.</translation>
    </message>
    <message>
      <source>Expected {what} on record ({listed}); got “{value}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected {what}.</source>
      <translation>Erwartet: {what}.</translation>
    </message>
    <message>
      <source>Expected “recovered”, for there are weighings of a cylinder.</source>
      <translation>Erwartet wurde „abgesaugt“, denn es gibt Wägungen einer Flasche.</translation>
    </message>
    <message>
      <source>exponential</source>
      <translation>exponentiell</translation>
    </message>
    <message>
      <source>export</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>extended: {ground}</source>
      <translation>verlängert: {ground}</translation>
    </message>
    <message>
      <source>extends</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>extensions</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>F1 guide</source>
      <translation>F1 Anleitung</translation>
    </message>
    <message>
      <source>F1 guide and keys</source>
      <translation>F1 Anleitung und Tasten</translation>
    </message>
    <message>
      <source>F11 bench display</source>
      <translation>F11 Großanzeige</translation>
    </message>
    <message>
      <source>F11: figures readable from three metres</source>
      <translation>F11: Zahlen, aus drei Metern lesbar</translation>
    </message>
    <message>
      <source>F2 take reading</source>
      <translation>F2 Anzeige übernehmen</translation>
    </message>
    <message>
      <source>F2: into the field typed in</source>
      <translation>F2: in das Feld, in dem man schreibt</translation>
    </message>
    <message>
      <source>F4 who signs</source>
      <translation>F4 wer abzeichnet</translation>
    </message>
    <message>
      <source>F4: who signs</source>
      <translation>F4: wer abzeichnet</translation>
    </message>
    <message>
      <source>F6 steps or form</source>
      <translation>F6 Schritte oder Formular</translation>
    </message>
    <message>
      <source>F7 reference</source>
      <translation>F7 Nachschlagen</translation>
    </message>
    <message>
      <source>F7: saturation table, chart, limits of any refrigerant</source>
      <translation>F7: Sättigungstabelle, Diagramm, Grenzen jedes Kältemittels</translation>
    </message>
    <message>
      <source>F8 flags</source>
      <translation>F8 Meldungen</translation>
    </message>
    <message>
      <source>F9 worked out</source>
      <translation>F9 Berechnetes</translation>
    </message>
    <message>
      <source>facility bought, its former owner used the other</source>
      <translation>Standort gekauft, der frühere Eigentümer nutzte die andere</translation>
    </message>
    <message>
      <source>Factory charged and sealed</source>
      <translation>Im Werk gefüllt und verschlossen</translation>
    </message>
    <message>
      <source>failed</source>
      <translation>nicht bestanden</translation>
    </message>
    <message>
      <source>faint</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>false</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>fatigue at the first bend</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Fault</source>
      <translation>Fehler</translation>
    </message>
    <message>
      <source>Faults of a small degree do not show here.</source>
      <translation>Fehler geringen Ausmaßes zeigen sich hier nicht.</translation>
    </message>
    <message>
      <source>fell</source>
      <translation>fiel</translation>
    </message>
    <message>
      <source>Field</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>figure</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>figures</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Figures of the shop's own, laid over the rule set; beside the shop's records.</source>
      <translation>Eigene Werte der Werkstatt, über das Regelwerk gelegt; neben den Aufzeichnungen.</translation>
    </message>
    <message>
      <source>File</source>
      <translation>Datei</translation>
    </message>
    <message>
      <source>file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>File to write</source>
      <translation>Zu schreibende Datei</translation>
    </message>
    <message>
      <source>file {path}</source>
      <translation>Datei {path}</translation>
    </message>
    <message>
      <source>fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Fill against limit</source>
      <translation>Füllung gegen Grenze</translation>
    </message>
    <message>
      <source>Fill: {share_words}</source>
      <translation>Füllung: {share_words}</translation>
    </message>
    <message>
      <source>filter drier</source>
      <translation>Filtertrockner</translation>
    </message>
    <message>
      <source>Filter-drier joints</source>
      <translation>Verbindungen des Filtertrockners</translation>
    </message>
    <message>
      <source>Find a cylinder or an instrument</source>
      <translation>Flasche oder Messgerät suchen</translation>
    </message>
    <message>
      <source>Find a job</source>
      <translation>Auftrag suchen</translation>
    </message>
    <message>
      <source>Find a row</source>
      <translation>Eine Zeile suchen</translation>
    </message>
    <message>
      <source>Find the leak</source>
      <translation>Das Leck suchen</translation>
    </message>
    <message>
      <source>Find the leak; do not charge.</source>
      <translation>Das Leck suchen; nicht füllen.</translation>
    </message>
    <message>
      <source>Findings</source>
      <translation>Befunde</translation>
    </message>
    <message>
      <source>findings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>first</source>
      <translation>erste</translation>
    </message>
    <message>
      <source>Fl&amp;ags</source>
      <translation>&amp;Meldungen</translation>
    </message>
    <message>
      <source>Flag</source>
      <translation>Meldung</translation>
    </message>
    <message>
      <source>Flags</source>
      <translation>Meldungen</translation>
    </message>
    <message>
      <source>flags</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>flammability</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>flammable</source>
      <translation>brennbar</translation>
    </message>
    <message>
      <source>Flammable gases</source>
      <translation>Brennbare Gase</translation>
    </message>
    <message>
      <source>Flare joints at both units</source>
      <translation>Bördelverbindungen an beiden Geräten</translation>
    </message>
    <message>
      <source>flares</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Floor area of the room</source>
      <translation>Bodenfläche des Raums</translation>
    </message>
    <message>
      <source>floor-area</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>fluorescent dye already present</source>
      <translation>vorhandenes Fluoreszenzmittel</translation>
    </message>
    <message>
      <source>Fluorinated gas is recovered; hydrocarbons, carbon dioxide and ammonia are not fluorinated gases: other law and good practice decide.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Fluorinated gas is recovered; recovered gas is used again only recycled or reclaimed. Hydrocarbons, carbon dioxide and ammonia are not fluorinated gases: national law decides.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Folder to write into</source>
      <translation>Zielordner</translation>
    </message>
    <message>
      <source>Follow-up</source>
      <translation>Nachkontrolle</translation>
    </message>
    <message>
      <source>follow-up</source>
      <translation>Nachkontrolle</translation>
    </message>
    <message>
      <source>follow-up verification test</source>
      <translation>weitere Nachweisprüfung</translation>
    </message>
    <message>
      <source>Follow-up was due on {due}: {what}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>follow-up-due</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>fonts</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>foot</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>foot|feet|'|ft.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>for</source>
      <translation>dafür</translation>
    </message>
    <message>
      <source>for example {example}</source>
      <translation>zum Beispiel {example}</translation>
    </message>
    <message>
      <source>foreign_keys=ON</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>format</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Found</source>
      <translation>Gefunden</translation>
    </message>
    <message>
      <source>found</source>
      <translation>gefunden</translation>
    </message>
    <message>
      <source>found above the assumed</source>
      <translation>über dem Angenommenen gefunden</translation>
    </message>
    <message>
      <source>Found missing</source>
      <translation>Fehlend gefunden</translation>
    </message>
    <message>
      <source>Found over</source>
      <translation>Überschüssig gefunden</translation>
    </message>
    <message>
      <source>found tight</source>
      <translation>dicht befunden</translation>
    </message>
    <message>
      <source>Fro&amp;m</source>
      <translation>&amp;Von</translation>
    </message>
    <message>
      <source>From</source>
      <translation>Von</translation>
    </message>
    <message>
      <source>from</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>From &amp;file…</source>
      <translation>Aus &amp;Datei…</translation>
    </message>
    <message>
      <source>From one cylinder into another, by the weight of the one on the scale.</source>
      <translation>Aus einer Flasche in eine andere, nach dem Gewicht der auf der Waage.</translation>
    </message>
    <message>
      <source>From or to</source>
      <translation>Von oder nach</translation>
    </message>
    <message>
      <source>from {since}</source>
      <translation>ab {since}</translation>
    </message>
    <message>
      <source>From, first day</source>
      <translation>Von, erster Tag</translation>
    </message>
    <message>
      <source>Frost</source>
      <translation>Reif</translation>
    </message>
    <message>
      <source>frost</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>frost pattern</source>
      <translation>Reifbild</translation>
    </message>
    <message>
      <source>ft**2</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ft**3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ft2|sqft|sq ft</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ft3|cu ft|cuft</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Full charge</source>
      <translation>Volle Füllmenge</translation>
    </message>
    <message>
      <source>full charge and equipment record</source>
      <translation>Aufzeichnung von Füllmenge und Anlage</translation>
    </message>
    <message>
      <source>Full charge revised on</source>
      <translation>Volle Füllmenge berichtigt am</translation>
    </message>
    <message>
      <source>function</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>fusible plug, seals</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Fusion</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>F|degF|deg F|fahrenheit|ºF</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>F|degF|delta F|deltaF|R</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>g / year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>g/y|g/a|g/year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>gain</source>
      <translation>Steigung</translation>
    </message>
    <message>
      <source>gained</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Gas</source>
      <translation>Gas</translation>
    </message>
    <message>
      <source>gas</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Gauge</source>
      <translation>Messgerät</translation>
    </message>
    <message>
      <source>gauge</source>
      <translation>Messgerät</translation>
    </message>
    <message>
      <source>Gauge at site</source>
      <translation>Messgerät am Ort</translation>
    </message>
    <message>
      <source>Gauge pressures where the air has {zero}.</source>
      <translation>Überdrücke, wo die Luft {zero} hat.</translation>
    </message>
    <message>
      <source>Gauge reading</source>
      <translation>Anzeige des Messgeräts</translation>
    </message>
    <message>
      <source>Gauge resolution</source>
      <translation>Auflösung des Messgeräts</translation>
    </message>
    <message>
      <source>Gauges connected</source>
      <translation>Messgeräte angeschlossen</translation>
    </message>
    <message>
      <source>generic</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Given by</source>
      <translation>Angegeben von</translation>
    </message>
    <message>
      <source>Given by {given_by}.</source>
      <translation>Angegeben von {given_by}.</translation>
    </message>
    <message>
      <source>Go back to a backup</source>
      <translation>Zu einer Sicherung zurückgehen</translation>
    </message>
    <message>
      <source>Go back to a backup, or rescue what can be read</source>
      <translation>Zu einer Sicherung zurückgehen oder retten, was lesbar ist</translation>
    </message>
    <message>
      <source>Go back to a copy of this shop</source>
      <translation>Zu einer Kopie dieser Werkstatt zurückgehen</translation>
    </message>
    <message>
      <source>Go on</source>
      <translation>Weiter</translation>
    </message>
    <message>
      <source>Go on for {minutes} more minutes.</source>
      <translation>Noch {minutes} Minuten weiter.</translation>
    </message>
    <message>
      <source>Go to {other_number}</source>
      <translation>Zu {other_number}</translation>
    </message>
    <message>
      <source>Goggles and gloves worn; liquid refrigerant freezes skin and eyes.</source>
      <translation>Schutzbrille und Handschuhe getragen; flüssiges Kältemittel erfriert Haut und Augen.</translation>
    </message>
    <message>
      <source>gram</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>gram / meter ** 3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>gram|grams|gr</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>gross</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Gross weight</source>
      <translation>Bruttogewicht</translation>
    </message>
    <message>
      <source>Ground</source>
      <translation>Grund</translation>
    </message>
    <message>
      <source>ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>guards-mended</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Guide</source>
      <translation>Anleitung</translation>
    </message>
    <message>
      <source>guide</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>gwp</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>GWP {potential:g}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>GWP, 100 years, {which}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>halocarbon</source>
      <translation>Halogenkohlenwasserstoff</translation>
    </message>
    <message>
      <source>Hand &amp;over…</source>
      <translation>Ü&amp;bergeben…</translation>
    </message>
    <message>
      <source>handed-over</source>
      <translation>übergeben</translation>
    </message>
    <message>
      <source>Handling checklist</source>
      <translation>Prüfliste für die Handhabung</translation>
    </message>
    <message>
      <source>Happened</source>
      <translation>Geschehen</translation>
    </message>
    <message>
      <source>happened_at needs its zone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Hardly any refrigerant reaches the coil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Has no bearing on it.</source>
      <translation>Hat damit nichts zu tun.</translation>
    </message>
    <message>
      <source>has no requalification date</source>
      <translation>hat keinen Termin der wiederkehrenden Prüfung</translation>
    </message>
    <message>
      <source>hash</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Hash, first digits</source>
      <translation>Hash, erste Ziffern</translation>
    </message>
    <message>
      <source>head</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Head pressure pushes more through a capillary tube, but slightly.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>headers</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Height above sea level</source>
      <translation>Höhe über dem Meer</translation>
    </message>
    <message>
      <source>Height of a release</source>
      <translation>Höhe einer Freisetzung</translation>
    </message>
    <message>
      <source>Height of the room</source>
      <translation>Höhe des Raums</translation>
    </message>
    <message>
      <source>Held after</source>
      <translation>Danach enthalten</translation>
    </message>
    <message>
      <source>Held against today's; a figure of another kind stands in words below.</source>
      <translation>Wird mit den heutigen verglichen; ein Wert anderer Art steht unten in Worten.</translation>
    </message>
    <message>
      <source>Held for</source>
      <translation>Gehalten</translation>
    </message>
    <message>
      <source>Held-back liquid takes some surface, a starved coil brings less heat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>here</source>
      <translation>hier</translation>
    </message>
    <message>
      <source>HFC or GWP</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>HFO mass</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>high</source>
      <translation>hoch</translation>
    </message>
    <message>
      <source>High head and dense suction load the compressor.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>High head loads the compressor.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>High head pressure hardly raises superheat.</source>
      <translation>Hoher Verflüssigungsdruck hebt die Überhitzung kaum.</translation>
    </message>
    <message>
      <source>High head pressure weakens the compressor's suction.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>High head would raise it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>high side</source>
      <translation>Hochdruckseite</translation>
    </message>
    <message>
      <source>High-side design pressure</source>
      <translation>Auslegungsdruck Hochdruckseite</translation>
    </message>
    <message>
      <source>higher</source>
      <translation>höher</translation>
    </message>
    <message>
      <source>highly flammable</source>
      <translation>hochentzündlich</translation>
    </message>
    <message>
      <source>History, newest first</source>
      <translation>Verlauf, Neuestes zuerst</translation>
    </message>
    <message>
      <source>hold</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Hold to see {wanted}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Hold {more} more minutes: the rule set wants {least}.</source>
      <translation>Noch {more} Minuten halten: das Regelwerk verlangt {least}.</translation>
    </message>
    <message>
      <source>Holds</source>
      <translation>Enthält</translation>
    </message>
    <message>
      <source>Holds from, to</source>
      <translation>Gilt von, bis</translation>
    </message>
    <message>
      <source>holds {held} of {limit}, {share_words} ({by}){gross}</source>
      <translation>enthält {held} von {limit}, {share_words} ({by}){gross}</translation>
    </message>
    <message>
      <source>holds {held}; no limit can be worked out without its water capacity</source>
      <translation>enthält {held}; ohne Wasserkapazität ist keine Grenze zu berechnen</translation>
    </message>
    <message>
      <source>hose</source>
      <translation>Schlauch</translation>
    </message>
    <message>
      <source>Hose at the end</source>
      <translation>Schlauch am Ende</translation>
    </message>
    <message>
      <source>Hose bore</source>
      <translation>Schlauchinnendurchmesser</translation>
    </message>
    <message>
      <source>hose content</source>
      <translation>Schlauchinhalt</translation>
    </message>
    <message>
      <source>Hose length</source>
      <translation>Schlauchlänge</translation>
    </message>
    <message>
      <source>Hose temperature</source>
      <translation>Schlauchtemperatur</translation>
    </message>
    <message>
      <source>Hose, share of the charge</source>
      <translation>Schlauch, Anteil der Füllung</translation>
    </message>
    <message>
      <source>hose-share</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Hoses are as short as will do, free of other refrigerant, and the cylinder stands as its valve needs it.</source>
      <translation>Schläuche sind so kurz wie möglich, frei von anderem Kältemittel, und die Flasche steht, wie ihr Ventil es braucht.</translation>
    </message>
    <message>
      <source>host</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>hot gas in the foam, if fitted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>hour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>household</source>
      <translation>Haushalt</translation>
    </message>
    <message>
      <source>household refrigerator or freezer</source>
      <translation>Haushaltskühl- oder -gefriergerät</translation>
    </message>
    <message>
      <source>How</source>
      <translation>Wie</translation>
    </message>
    <message>
      <source>how</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>How a scale or gauge speaks, where it can be read straight from its port.</source>
      <translation>Wie eine Waage oder ein Messgerät spricht, wo es direkt vom Anschluss gelesen werden kann.</translation>
    </message>
    <message>
      <source>How far the chain of bench {bench} went can not be told; entry {last} is the last that was found.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>How it was settled</source>
      <translation>Wie er geklärt wurde</translation>
    </message>
    <message>
      <source>How the area is ventilated</source>
      <translation>Wie der Bereich gelüftet ist</translation>
    </message>
    <message>
      <source>How the full charge is known</source>
      <translation>Woher die volle Füllmenge bekannt ist</translation>
    </message>
    <message>
      <source>How the full charge was revised</source>
      <translation>Wie die volle Füllmenge berichtigt wurde</translation>
    </message>
    <message>
      <source>How the range was found</source>
      <translation>Wie der Bereich ermittelt wurde</translation>
    </message>
    <message>
      <source>how two of its components mix was estimated, not fitted</source>
      <translation>wie sich zwei der Bestandteile mischen, wurde geschätzt, nicht angepasst</translation>
    </message>
    <message>
      <source>hr|hrs|hour|hours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>hydrocarbon</source>
      <translation>Kohlenwasserstoff</translation>
    </message>
    <message>
      <source>Hydrocarbon ignites on surfaces from about 450 °C: heat guns, soldering irons and defrost heaters count.</source>
      <translation>Kohlenwasserstoff zündet an Flächen ab etwa 450 °C: Heißluftpistolen, Lötkolben und Abtauheizungen zählen.</translation>
    </message>
    <message>
      <source>iapfr</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ice keeps the air out, whatever first caused it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ice machine</source>
      <translation>Eisbereiter</translation>
    </message>
    <message>
      <source>ice-pick holes, drain corrosion</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>iced solid</source>
      <translation>ganz vereist</translation>
    </message>
    <message>
      <source>icons</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Id of the {register}</source>
      <translation>Kennung: {register}</translation>
    </message>
    <message>
      <source>id or part of the name</source>
      <translation>Kennung oder Teil des Namens</translation>
    </message>
    <message>
      <source>Id, as on its label</source>
      <translation>Kennung, wie auf dem Aufkleber</translation>
    </message>
    <message>
      <source>idle</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>if a heat pump</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>If all leaked into the room</source>
      <translation>Wenn alles in den Raum entwiche</translation>
    </message>
    <message>
      <source>If all leaked into the room, share of the lower flammable limit</source>
      <translation>Wenn alles in den Raum entwiche, Anteil der unteren Explosionsgrenze</translation>
    </message>
    <message>
      <source>If it is released instead: outdoors, slowly, away from drains and openings, and only where the rule set's exemption names this equipment.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>If not this shop.</source>
      <translation>Wenn nicht diese Werkstatt.</translation>
    </message>
    <message>
      <source>If not, it does only of people who have set one.</source>
      <translation>Wenn nicht, nur bei Personen, die eines gesetzt haben.</translation>
    </message>
    <message>
      <source>If the circuit must be opened, a workshop was preferred to the customer's rooms.</source>
      <translation>Muss der Kreislauf geöffnet werden, wurde eine Werkstatt den Räumen des Kunden vorgezogen.</translation>
    </message>
    <message>
      <source>ignition</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>In a residential building</source>
      <translation>In einem Wohngebäude</translation>
    </message>
    <message>
      <source>in before</source>
      <translation>vorher darin</translation>
    </message>
    <message>
      <source>in it</source>
      <translation>darin</translation>
    </message>
    <message>
      <source>in none</source>
      <translation>in keinem</translation>
    </message>
    <message>
      <source>In steps of</source>
      <translation>In Schritten von</translation>
    </message>
    <message>
      <source>in the hose</source>
      <translation>im Schlauch</translation>
    </message>
    <message>
      <source>In words</source>
      <translation>In Worten</translation>
    </message>
    <message>
      <source>In {charged} of {nameplate}: {verdict} (±{expanded}, k = 2).</source>
      <translation>{charged} von {nameplate} darin: {verdict} (±{expanded}, k = 2).</translation>
    </message>
    <message>
      <source>in {count}</source>
      <translation>in {count}</translation>
    </message>
    <message>
      <source>in {span}, {due}</source>
      <translation>in {span}, {due}</translation>
    </message>
    <message>
      <source>in2|sqin|sq in</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>in3|cu in|cuin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>inch</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>inch**2</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>inch**3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>inch|inches|"|in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>industrial process</source>
      <translation>Industrieprozess</translation>
    </message>
    <message>
      <source>inHg vac</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>inHg vacuum</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>inHg(a)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>inHga|inHgabs|inHg(abs)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>initial</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>initial verification test</source>
      <translation>erste Nachweisprüfung</translation>
    </message>
    <message>
      <source>Initial: before refrigerant goes back in. Follow-up: running as normal.</source>
      <translation>Erstprüfung: bevor wieder Kältemittel hineinkommt. Nachprüfung: im normalen Betrieb.</translation>
    </message>
    <message>
      <source>installation</source>
      <translation>Einbau</translation>
    </message>
    <message>
      <source>installed</source>
      <translation>eingebaut</translation>
    </message>
    <message>
      <source>Installed on</source>
      <translation>Eingebaut am</translation>
    </message>
    <message>
      <source>Instrument</source>
      <translation>Messgerät</translation>
    </message>
    <message>
      <source>instrument</source>
      <translation>Messgerät</translation>
    </message>
    <message>
      <source>Instruments</source>
      <translation>Messgeräte</translation>
    </message>
    <message>
      <source>Internal volume</source>
      <translation>Innenvolumen</translation>
    </message>
    <message>
      <source>Into</source>
      <translation>In</translation>
    </message>
    <message>
      <source>into</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>into an evacuated system</source>
      <translation>in ein evakuiertes System</translation>
    </message>
    <message>
      <source>Into the file</source>
      <translation>In die Datei</translation>
    </message>
    <message>
      <source>Into the folder</source>
      <translation>In den Ordner</translation>
    </message>
    <message>
      <source>invoice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Invoice or delivery note</source>
      <translation>Rechnung oder Lieferschein</translation>
    </message>
    <message>
      <source>is another file now</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>is damaged: it does not say its {key}. Have its administrator restore a backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>is damaged: it does not say its {key}. Restore the newest backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>is gone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Isolate the pump</source>
      <translation>Pumpe absperren</translation>
    </message>
    <message>
      <source>Isolate the pump and read the gauge: a decay test needs at least three readings.</source>
      <translation>Die Pumpe absperren und ablesen: eine Vakuumstandprobe braucht mindestens drei Ablesungen.</translation>
    </message>
    <message>
      <source>Isolated at</source>
      <translation>Abgesperrt um</translation>
    </message>
    <message>
      <source>Isolation valves: stems and caps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It belongs to a job that no entry before it opened.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it can not be read</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It can not show who sat at the bench: names are as signed, not proven.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It computes, records and flags. Local codes, the equipment maker's instructions and a licensed person's judgement come first.</source>
      <translation>Das Programm rechnet, zeichnet auf und meldet. Örtliche Vorschriften, Anweisungen des Herstellers und das Urteil einer Fachkraft gehen vor.</translation>
    </message>
    <message>
      <source>it does not hold the tables of a shop</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It does not say which entries it took in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it is damaged on its server. Tell its administrator, who can rebuild its indexes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it is damaged on its server. Tell its administrator, who can restore a backup</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it is damaged. Restore the newest backup, the present file is kept aside; or bring what can be read of both into a new file: chargebench rescue --shop OLD --out NEW</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It is not what this program signs as “{kind}” ({problem}). If that bench runs a newer chargebench, take the file in with one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It levels off, but above the vapour pressure of water at the temperature given: not water alone. Refrigerant out of the oil or a leak stays possible.</source>
      <translation>Es flacht ab, aber über dem Dampfdruck von Wasser bei der angegebenen Temperatur: nicht Wasser allein. Kältemittel aus dem Öl oder ein Leck bleiben möglich.</translation>
    </message>
    <message>
      <source>It may have gone with hose connections: each takes what the hose holds.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It may never have been charged right: a short weigh-in leaves the same figure.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It names no job.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it or its folder can not be written to. Move it to a folder you may write in, or change its rights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it sees from {sees} {label}; the loss is {lost} {label}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it was overcharged, or something else than this refrigerant came with it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It was seen to be clean, as far as one can look in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>its fill limit</source>
      <translation>ihre Füllgrenze</translation>
    </message>
    <message>
      <source>its server asks for a password. Keep it in this computer's password file for PostgreSQL (.pgpass), or write it into the address</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>its server cut the work short. Do it again, or ask its administrator</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>its server does not answer. Check the network, or ask who looks after the server</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>its server is at the end of its means. Close what else uses it, or try later</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>its server only lets read at present. Ask its administrator</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>its server refuses: {said}. Ask who looks after it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Its vapour is heavier than air and sinks.</source>
      <translation>Sein Dampf ist schwerer als Luft und sinkt.</translation>
    </message>
    <message>
      <source>Its vapour is lighter than air and rises.</source>
      <translation>Sein Dampf ist leichter als Luft und steigt.</translation>
    </message>
    <message>
      <source>Job</source>
      <translation>Auftrag</translation>
    </message>
    <message>
      <source>job</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Job and chain files (*.json *.chain);;All files (*)</source>
      <translation>Auftrags- und Kettendateien (*.json *.chain);;Alle Dateien (*)</translation>
    </message>
    <message>
      <source>job closed</source>
      <translation>Auftrag abgeschlossen</translation>
    </message>
    <message>
      <source>Job closed.</source>
      <translation>Auftrag abgeschlossen.</translation>
    </message>
    <message>
      <source>job files</source>
      <translation>Auftragsdateien</translation>
    </message>
    <message>
      <source>Job open again.</source>
      <translation>Auftrag wieder offen.</translation>
    </message>
    <message>
      <source>job opened</source>
      <translation>Auftrag eröffnet</translation>
    </message>
    <message>
      <source>job reopened</source>
      <translation>Auftrag wieder eröffnet</translation>
    </message>
    <message>
      <source>Job report</source>
      <translation>Auftragsbericht</translation>
    </message>
    <message>
      <source>Job reports</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>job reports</source>
      <translation>Auftragsberichte</translation>
    </message>
    <message>
      <source>Job {job_number} is closed. Reopen it with a reason, or record a follow-up.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Job {job_number} is open already.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Job {job} is not what its entries say of it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>job, equipment, site, refrigerant</source>
      <translation>Auftrag, Anlage, Standort, Kältemittel</translation>
    </message>
    <message>
      <source>job, step</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>job-closed</source>
      <translation>Auftrag abgeschlossen</translation>
    </message>
    <message>
      <source>job-opened</source>
      <translation>Auftrag eröffnet</translation>
    </message>
    <message>
      <source>job-reopened</source>
      <translation>Auftrag wieder eröffnet</translation>
    </message>
    <message>
      <source>job.steps[{number}] ({step}): {refusal}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Jobs</source>
      <translation>Aufträge</translation>
    </message>
    <message>
      <source>jobs</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>jobs closed in {month}</source>
      <translation>im {month} abgeschlossene Aufträge</translation>
    </message>
    <message>
      <source>Join a shop</source>
      <translation>Werkstatt beitreten</translation>
    </message>
    <message>
      <source>Joints soaped meanwhile</source>
      <translation>Verbindungen dabei abgeseift</translation>
    </message>
    <message>
      <source>Judged by {called}.</source>
      <translation>Beurteilt nach {called}.</translation>
    </message>
    <message>
      <source>jurisdiction</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>k = 2, about 95 %</source>
      <translation>k = 2, etwa 95 %</translation>
    </message>
    <message>
      <source>kbf</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kelvin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kelvin|°C|C|degC|delta C|deltaC</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kept long enough</source>
      <translation>lange genug aufbewahrt</translation>
    </message>
    <message>
      <source>Kept on this computer; counts once this page is closed.</source>
      <translation>Bleibt auf diesem Rechner; gilt, sobald diese Seite geschlossen wird.</translation>
    </message>
    <message>
      <source>key</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Keys</source>
      <translation>Tasten</translation>
    </message>
    <message>
      <source>keys</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kg / m**3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kg / year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kg/m**3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kg/y|kg/a|kg/year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kilogram</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kilogram / meter ** 3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kilogram|kilograms|kilo|kilos</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kilopascal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Kind</source>
      <translation>Art</translation>
    </message>
    <message>
      <source>kind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Kind of work</source>
      <translation>Art der Arbeit</translation>
    </message>
    <message>
      <source>Knowing release is prohibited; small losses in good-faith recovery with certified machine and technician are not counted.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>known</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kpa</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kPaa|kPaabs|kPa(abs)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kPag|kPagauge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>La&amp;bel…</source>
      <translation>Auf&amp;kleber…</translation>
    </message>
    <message>
      <source>Label</source>
      <translation>Aufkleber</translation>
    </message>
    <message>
      <source>Label on a sheet</source>
      <translation>Aufkleber auf einem Bogen</translation>
    </message>
    <message>
      <source>Labelled hermetically sealed</source>
      <translation>Als hermetisch geschlossen gekennzeichnet</translation>
    </message>
    <message>
      <source>labels</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Labels and markings in place</source>
      <translation>Aufkleber und Kennzeichnungen angebracht</translation>
    </message>
    <message>
      <source>Labels of all that are listed</source>
      <translation>Aufkleber aller aufgelisteten</translation>
    </message>
    <message>
      <source>Language</source>
      <translation>Sprache</translation>
    </message>
    <message>
      <source>language</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>largest error in proportion to the mass</source>
      <translation>größter Fehler im Verhältnis zur Masse</translation>
    </message>
    <message>
      <source>Largest fit error</source>
      <translation>Größter Anpassungsfehler</translation>
    </message>
    <message>
      <source>Larkmoor Cold</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>last</source>
      <translation>letzte</translation>
    </message>
    <message>
      <source>last 12 months</source>
      <translation>letzte 12 Monate</translation>
    </message>
    <message>
      <source>Last added</source>
      <translation>Zuletzt nachgefüllt</translation>
    </message>
    <message>
      <source>Last calibrated</source>
      <translation>Zuletzt kalibriert</translation>
    </message>
    <message>
      <source>Last known full on</source>
      <translation>Zuletzt bekannt voll am</translation>
    </message>
    <message>
      <source>Last requalified</source>
      <translation>Zuletzt wiederkehrend geprüft</translation>
    </message>
    <message>
      <source>Last weighed</source>
      <translation>Zuletzt gewogen</translation>
    </message>
    <message>
      <source>last weighed {last}</source>
      <translation>zuletzt gewogen {last}</translation>
    </message>
    <message>
      <source>last year</source>
      <translation>letztes Jahr</translation>
    </message>
    <message>
      <source>later</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lb / ft**3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lb / year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lb/ft**3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lb/y|lb/year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lbs|pound|pounds|lb.|lbs.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>leak</source>
      <translation>Leck</translation>
    </message>
    <message>
      <source>leak check</source>
      <translation>Dichtheitskontrolle</translation>
    </message>
    <message>
      <source>Leak check owed every</source>
      <translation>Dichtheitskontrolle geschuldet alle</translation>
    </message>
    <message>
      <source>Leak checked after charging and before leaving</source>
      <translation>Nach dem Füllen und vor dem Gehen auf Lecks geprüft</translation>
    </message>
    <message>
      <source>leak checks</source>
      <translation>Dichtheitskontrollen</translation>
    </message>
    <message>
      <source>leak detection system check</source>
      <translation>Prüfung der Leckerkennung</translation>
    </message>
    <message>
      <source>Leak detection system fitted</source>
      <translation>Leckerkennungssystem eingebaut</translation>
    </message>
    <message>
      <source>leak detector</source>
      <translation>Lecksuchgerät</translation>
    </message>
    <message>
      <source>leak inspection</source>
      <translation>Leckinspektion</translation>
    </message>
    <message>
      <source>Leak rate method</source>
      <translation>Methode der Leckrate</translation>
    </message>
    <message>
      <source>leak rate method changed</source>
      <translation>Leckratenmethode geändert</translation>
    </message>
    <message>
      <source>Leak rates</source>
      <translation>Leckraten</translation>
    </message>
    <message>
      <source>Leak search</source>
      <translation>Lecksuche</translation>
    </message>
    <message>
      <source>Leak search and pressure test</source>
      <translation>Lecksuche und Druckprobe</translation>
    </message>
    <message>
      <source>Leak that can not be excluded</source>
      <translation>Leck, das nicht auszuschließen ist</translation>
    </message>
    <message>
      <source>leak-check</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>leak-method-changed</source>
      <translation>Leckratenmethode geändert</translation>
    </message>
    <message>
      <source>leak-not-verified</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>leak-open</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>leak-rate-over</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>leak-search</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>leaks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Leaks found</source>
      <translation>Gefundene Lecks</translation>
    </message>
    <message>
      <source>Leave empty where it replaces what leaked.</source>
      <translation>Leer lassen, wo es Entwichenes ersetzt.</translation>
    </message>
    <message>
      <source>Leave them</source>
      <translation>Weglassen</translation>
    </message>
    <message>
      <source>Left</source>
      <translation>Übrig</translation>
    </message>
    <message>
      <source>left</source>
      <translation>übrig</translation>
    </message>
    <message>
      <source>Left in hoses</source>
      <translation>In Schläuchen geblieben</translation>
    </message>
    <message>
      <source>Left in the hose</source>
      <translation>Im Schlauch geblieben</translation>
    </message>
    <message>
      <source>left in the hose</source>
      <translation>im Schlauch geblieben</translation>
    </message>
    <message>
      <source>left in {cylinder}</source>
      <translation>übrig in {cylinder}</translation>
    </message>
    <message>
      <source>left off</source>
      <translation>abgeschaltet verlassen</translation>
    </message>
    <message>
      <source>left running</source>
      <translation>laufend verlassen</translation>
    </message>
    <message>
      <source>left to be found out</source>
      <translation>bleibt zu klären</translation>
    </message>
    <message>
      <source>length</source>
      <translation>Länge</translation>
    </message>
    <message>
      <source>Less</source>
      <translation>Weniger</translation>
    </message>
    <message>
      <source>less</source>
      <translation>weniger</translation>
    </message>
    <message>
      <source>Less heat taken up means less to shed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Letter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>letter, file or claim number</source>
      <translation>Schreiben, Datei oder Antragsnummer</translation>
    </message>
    <message>
      <source>Level</source>
      <translation>Stufe</translation>
    </message>
    <message>
      <source>level</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Level reached</source>
      <translation>Erreichter Stand</translation>
    </message>
    <message>
      <source>levels</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lfl</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Light</source>
      <translation>Hell</translation>
    </message>
    <message>
      <source>light</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Light or dark</source>
      <translation>Hell oder dunkel</translation>
    </message>
    <message>
      <source>limit not known</source>
      <translation>Grenze nicht bekannt</translation>
    </message>
    <message>
      <source>limits</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Limits and duties of one jurisdiction.</source>
      <translation>Grenzen und Pflichten eines Rechtsgebiets.</translation>
    </message>
    <message>
      <source>Line</source>
      <translation>Zeile</translation>
    </message>
    <message>
      <source>line</source>
      <translation>Gerade</translation>
    </message>
    <message>
      <source>line + exponential</source>
      <translation>Gerade + exponentiell</translation>
    </message>
    <message>
      <source>line + {bend}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line set between the units</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>line {lineno}, character {colno}: This is not JSON; look for a missing comma, quote or bracket.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>line {lineno}: The file ends in the middle; it was cut short. Copy it again from where it came from.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line {number}: expected a later time than the line before; got “{time}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line {number}: expected a time and a reading; got “{line}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line {number}: expected a time like the one in the first line; got “{text}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line {number}: expected two columns; the comma in “{line}” may be a decimal mark. Part the columns by semicolon or tab.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line {number}: expected {kind} with its unit, such as {example}; got “{text}”. Write the unit in the cell or in the head of the column, as in pressure [micron].</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line {number}: expected {wanted}; got {cells}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line {number}: {refusal}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>line {number}: {what}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>line-set</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Lines as they come</source>
      <translation>Zeilen, wie sie kommen</translation>
    </message>
    <message>
      <source>Lines come from {port} but are not understood. {refusal}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lines[0].start</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>liquid</source>
      <translation>Flüssigkeit</translation>
    </message>
    <message>
      <source>Liquid [{density}]</source>
      <translation>Flüssigkeit [{density}]</translation>
    </message>
    <message>
      <source>Liquid and vapour have the same composition.</source>
      <translation>Flüssigkeit und Dampf haben dieselbe Zusammensetzung.</translation>
    </message>
    <message>
      <source>Liquid comes past the coil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>liquid density</source>
      <translation>Flüssigkeitsdichte</translation>
    </message>
    <message>
      <source>liquid full at hot temperature</source>
      <translation>flüssigkeitsvoll bei heißer Temperatur</translation>
    </message>
    <message>
      <source>Liquid is used up soon after the inlet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Liquid line temperature</source>
      <translation>Temperatur der Flüssigkeitsleitung</translation>
    </message>
    <message>
      <source>liquid line temperature</source>
      <translation>Temperatur der Flüssigkeitsleitung</translation>
    </message>
    <message>
      <source>liquid or vapour</source>
      <translation>flüssig oder dampfförmig</translation>
    </message>
    <message>
      <source>Liquid reaches the whole coil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Liquid stands in the condenser as it should; on a capillary tube that proves less.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Liquid stands in the condenser: there is some to spare.</source>
      <translation>Im Verflüssiger steht Flüssigkeit: es ist etwas übrig.</translation>
    </message>
    <message>
      <source>Liquid that can not pass on is held back in the condenser.</source>
      <translation>Flüssigkeit, die nicht weiterkann, staut sich im Verflüssiger.</translation>
    </message>
    <message>
      <source>Liquid that cools across the drier is being throttled there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Listen to a practice instrument of this program instead</source>
      <translation>Stattdessen ein Übungsgerät dieses Programms abhören</translation>
    </message>
    <message>
      <source>Listening at {port}.</source>
      <translation>{port} wird abgehört.</translation>
    </message>
    <message>
      <source>Little comes out to be found below {pressure} gauge.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Little gas to pump means little current.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Little heat taken up, little to shed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Little refrigerant goes round, so there is little heat to shed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>live</source>
      <translation>live</translation>
    </message>
    <message>
      <source>Local codes, the maker's instructions and a licensed person's judgement go before this list.</source>
      <translation>Örtliche Vorschriften, Anweisungen des Herstellers und das Urteil einer Fachkraft gehen dieser Liste vor.</translation>
    </message>
    <message>
      <source>Lock</source>
      <translation>Sperren</translation>
    </message>
    <message>
      <source>Lock now</source>
      <translation>Jetzt sperren</translation>
    </message>
    <message>
      <source>Locked</source>
      <translation>Gesperrt</translation>
    </message>
    <message>
      <source>Locked after a while without a key; the next signature asks again.</source>
      <translation>Nach einer Weile ohne Tastendruck gesperrt; die nächste Unterschrift fragt wieder.</translation>
    </message>
    <message>
      <source>Locked: unlock</source>
      <translation>Gesperrt: entsperren</translation>
    </message>
    <message>
      <source>Locked; the next signature of {name} asks for the passphrase.</source>
      <translation>Gesperrt; die nächste Unterschrift von {name} verlangt das Kennwort.</translation>
    </message>
    <message>
      <source>log rise</source>
      <translation>logarithmischer Anstieg</translation>
    </message>
    <message>
      <source>long text</source>
      <translation>langer Text</translation>
    </message>
    <message>
      <source>look</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look again</source>
      <translation>Noch einmal suchen</translation>
    </message>
    <message>
      <source>Look at both, put right what is wrong, then {settle}.</source>
      <translation>Beide ansehen, das Falsche berichtigen, dann {settle}.</translation>
    </message>
    <message>
      <source>Look for a rule &amp;file…</source>
      <translation>Regel&amp;datei suchen…</translation>
    </message>
    <message>
      <source>Look for ports again, as after plugging an adapter in</source>
      <translation>Noch einmal nach Anschlüssen suchen, etwa nach dem Einstecken eines Adapters</translation>
    </message>
    <message>
      <source>Looked at on</source>
      <translation>Angesehen am</translation>
    </message>
    <message>
      <source>loss</source>
      <translation>Verlust</translation>
    </message>
    <message>
      <source>Loss it is to see</source>
      <translation>Verlust, den sie sehen soll</translation>
    </message>
    <message>
      <source>loss per year</source>
      <translation>Verlust im Jahr</translation>
    </message>
    <message>
      <source>lost</source>
      <translation>verloren</translation>
    </message>
    <message>
      <source>low</source>
      <translation>niedrig</translation>
    </message>
    <message>
      <source>low charge</source>
      <translation>zu wenig Füllung</translation>
    </message>
    <message>
      <source>low side</source>
      <translation>Niederdruckseite</translation>
    </message>
    <message>
      <source>Low suction lowers it, but seldom as far.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Low suction means little current.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Low-side design pressure</source>
      <translation>Auslegungsdruck Niederdruckseite</translation>
    </message>
    <message>
      <source>lower</source>
      <translation>niedriger</translation>
    </message>
    <message>
      <source>Lower flammable limit</source>
      <translation>Untere Explosionsgrenze</translation>
    </message>
    <message>
      <source>Lower flammable limit by volume</source>
      <translation>Untere Explosionsgrenze nach Volumen</translation>
    </message>
    <message>
      <source>l|litre|liter|litres|liters|dm3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>m2|sqm|sq m</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>m3|cubic metre</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>machine</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Made</source>
      <translation>Angelegt</translation>
    </message>
    <message>
      <source>made</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Made on</source>
      <translation>Hergestellt am</translation>
    </message>
    <message>
      <source>main</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>maintenance or service</source>
      <translation>Wartung oder Service</translation>
    </message>
    <message>
      <source>Make</source>
      <translation>Marke</translation>
    </message>
    <message>
      <source>make</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Maker</source>
      <translation>Hersteller</translation>
    </message>
    <message>
      <source>maker</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Maker's figures</source>
      <translation>Werte des Herstellers</translation>
    </message>
    <message>
      <source>mark</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>mark the start</source>
      <translation>Anfang setzen</translation>
    </message>
    <message>
      <source>Mark the start first: press space at the reading it begins from.</source>
      <translation>Zuerst den Anfang setzen: Leertaste bei der Anzeige, von der aus gefüllt wird.</translation>
    </message>
    <message>
      <source>Mark when it &amp;moves</source>
      <translation>Zeichen, wenn &amp;bewegt</translation>
    </message>
    <message>
      <source>Mark when it &amp;rests</source>
      <translation>Zeichen, wenn &amp;ruhig</translation>
    </message>
    <message>
      <source>Mass</source>
      <translation>Masse</translation>
    </message>
    <message>
      <source>mass</source>
      <translation>Masse</translation>
    </message>
    <message>
      <source>Mass released</source>
      <translation>Abgelassene Masse</translation>
    </message>
    <message>
      <source>may be archived</source>
      <translation>darf ins Archiv</translation>
    </message>
    <message>
      <source>may have seen it or not</source>
      <translation>kann es gesehen haben oder nicht</translation>
    </message>
    <message>
      <source>mbar</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>mbar(a)|mbara</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>measure</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>media</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>medium</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Mend the fan first: until then the other readings mislead.</source>
      <translation>Zuerst den Lüfter richten: bis dahin führen die anderen Ablesungen irre.</translation>
    </message>
    <message>
      <source>met</source>
      <translation>erreicht</translation>
    </message>
    <message>
      <source>met-twice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>metering</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Method</source>
      <translation>Verfahren</translation>
    </message>
    <message>
      <source>method</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>metre|meter|metres|meters</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>micron</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>micron_Hg / minute</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>micron_Hg = 1e-3 * millimeter_Hg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>microns|µmHg|umHg|µm|mTorr</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>mildly flammable</source>
      <translation>schwer entflammbar</translation>
    </message>
    <message>
      <source>milliamp|milliamps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>milligram</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>milligram|milligrams</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>millimetre|millimeter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>milliseconds</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Mind: {text}</source>
      <translation>Beachten: {text}</translation>
    </message>
    <message>
      <source>Mind: {text} {source}</source>
      <translation>Beachten: {text} {source}</translation>
    </message>
    <message>
      <source>minute</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>minutes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>minutes-more</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>minute|minutes|mins</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>missing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Missing since last full</source>
      <translation>Fehlt seit zuletzt voll</translation>
    </message>
    <message>
      <source>mixed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>mixed waste</source>
      <translation>gemischter Abfall</translation>
    </message>
    <message>
      <source>ml|cc|cm3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>mmHg(a)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Model</source>
      <translation>Modell</translation>
    </message>
    <message>
      <source>model</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>moisture</source>
      <translation>Feuchte</translation>
    </message>
    <message>
      <source>Molar mass</source>
      <translation>Molmasse</translation>
    </message>
    <message>
      <source>month</source>
      <translation>Monat</translation>
    </message>
    <message>
      <source>more</source>
      <translation>mehr</translation>
    </message>
    <message>
      <source>More came out than the nameplate holds: {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>More than one number in this line could be the reading.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>more than the nameplate</source>
      <translation>mehr als das Typenschild</translation>
    </message>
    <message>
      <source>More time for the repair</source>
      <translation>Mehr Zeit für die Reparatur</translation>
    </message>
    <message>
      <source>mothballed</source>
      <translation>stillgelegt</translation>
    </message>
    <message>
      <source>mothballed for {days} days</source>
      <translation>für {days} Tage stillgelegt</translation>
    </message>
    <message>
      <source>Mothballed since</source>
      <translation>Stillgelegt seit</translation>
    </message>
    <message>
      <source>Mothballed until</source>
      <translation>Stillgelegt bis</translation>
    </message>
    <message>
      <source>Moved</source>
      <translation>Bewegt</translation>
    </message>
    <message>
      <source>moved</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>moves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>moving</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Moving air thins a leak below what is seen.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>mpa</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>MPaa|MPaabs|MPa(abs)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>MPag|MPagauge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Name</source>
      <translation>Name</translation>
    </message>
    <message>
      <source>name</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Name and address of the facility.</source>
      <translation>Name und Anschrift des Betriebs.</translation>
    </message>
    <message>
      <source>Nameplate</source>
      <translation>Typenschild</translation>
    </message>
    <message>
      <source>nameplate</source>
      <translation>Typenschild</translation>
    </message>
    <message>
      <source>Nameplate and markings read: refrigerant, charge, and the red mark on service port or process tube.</source>
      <translation>Typenschild und Kennzeichen gelesen: Kältemittel, Füllmenge und die rote Markierung am Serviceanschluss oder Füllstutzen.</translation>
    </message>
    <message>
      <source>Nameplate charge</source>
      <translation>Füllmenge des Typenschilds</translation>
    </message>
    <message>
      <source>nameplate {charge}{also}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nameplate {nameplate} is over the charge limit of {limit} ({title}) by {over}. Check nameplate and type; local codes decide.</source>
      <translation>Das Typenschild mit {nameplate} liegt um {over} über der Füllgrenze von {limit} ({title}). Typenschild und Bauart prüfen; örtliche Vorschriften entscheiden.</translation>
    </message>
    <message>
      <source>nameplate {view}</source>
      <translation>Typenschild {view}</translation>
    </message>
    <message>
      <source>nameplate-differs</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>natural</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>near</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Near its limit: {figures}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>needed</source>
      <translation>nötig</translation>
    </message>
    <message>
      <source>Net mass</source>
      <translation>Nettomasse</translation>
    </message>
    <message>
      <source>Net mass as invoiced</source>
      <translation>Nettomasse laut Rechnung</translation>
    </message>
    <message>
      <source>never</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Never above the lowest design pressure on the nameplate of the side under test.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>never weighed here</source>
      <translation>hier nie gewogen</translation>
    </message>
    <message>
      <source>New</source>
      <translation>Neu</translation>
    </message>
    <message>
      <source>new</source>
      <translation>neu</translation>
    </message>
    <message>
      <source>new installation</source>
      <translation>Neuanlage</translation>
    </message>
    <message>
      <source>New job</source>
      <translation>Neuer Auftrag</translation>
    </message>
    <message>
      <source>New one &amp;again</source>
      <translation>Neues n&amp;och einmal</translation>
    </message>
    <message>
      <source>New {register} …</source>
      <translation>Neu: {register} …</translation>
    </message>
    <message>
      <source>Next reading in {clock}</source>
      <translation>Nächste Ablesung in {clock}</translation>
    </message>
    <message>
      <source>Next step</source>
      <translation>Nächster Schritt</translation>
    </message>
    <message>
      <source>Next: {measure}. {reason}{hose}</source>
      <translation>Als Nächstes: {measure}. {reason}{hose}</translation>
    </message>
    <message>
      <source>Nitrogen</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>nitrogen</source>
      <translation>Stickstoff</translation>
    </message>
    <message>
      <source>Nitrogen alone first, then nitrogen with a trace of R22, pure refrigerant last.</source>
      <translation>Zuerst Stickstoff allein, dann Stickstoff mit einer Spur R22, reines Kältemittel zuletzt.</translation>
    </message>
    <message>
      <source>Nitrogen alone first; a trace gas only where the law and the maker allow it.</source>
      <translation>Zuerst Stickstoff allein; ein Prüfgas nur, wo Gesetz und Hersteller es erlauben.</translation>
    </message>
    <message>
      <source>Nitrogen flows before and while brazing; the process tube is cut, not unbrazed, where that will do.</source>
      <translation>Stickstoff fließt vor und beim Löten; der Füllstutzen wird geschnitten, nicht abgelötet, wo das reicht.</translation>
    </message>
    <message>
      <source>nitrogen with trace gas</source>
      <translation>Stickstoff mit Prüfgas</translation>
    </message>
    <message>
      <source>no addition since: presumed repaired</source>
      <translation>seither nichts nachgefüllt: gilt als repariert</translation>
    </message>
    <message>
      <source>no cylinders</source>
      <translation>keine Flaschen</translation>
    </message>
    <message>
      <source>No cylinders yet. Every gram comes from one and goes to one. Press New cylinder to put the first on the register, then receive what is in it.</source>
      <translation>Noch keine Flaschen. Jedes Gramm kommt aus einer und geht in eine. „Neue Flasche“ nimmt die erste ins Verzeichnis, dann ihren Inhalt als Zugang buchen.</translation>
    </message>
    <message>
      <source>No entry is known to be missing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No equipment yet. Leak rates are worked out for each equipment from what was added to it. Start a job on the Bench to put the first on the register.</source>
      <translation>Noch keine Anlagen. Leckraten werden für jede Anlage aus dem Nachgefüllten berechnet. An der Werkbank einen Auftrag beginnen, um die erste ins Verzeichnis zu nehmen.</translation>
    </message>
    <message>
      <source>No exemption of this rule set covers this release. Recover instead; ask the authority where in doubt.</source>
      <translation>Keine Ausnahme dieses Regelwerks deckt dieses Ablassen. Stattdessen absaugen; im Zweifel die Behörde fragen.</translation>
    </message>
    <message>
      <source>No finer scale alone would decide: repeatability, gain or hose doubt are too large.</source>
      <translation>Keine feinere Waage allein würde entscheiden: Wiederholbarkeit, Steigung oder Schlauch sind zu unsicher.</translation>
    </message>
    <message>
      <source>No flags on this job.</source>
      <translation>Keine Meldungen zu diesem Auftrag.</translation>
    </message>
    <message>
      <source>No flags: nothing here asks for attention.</source>
      <translation>Keine Meldungen: hier verlangt nichts Aufmerksamkeit.</translation>
    </message>
    <message>
      <source>No flame, smoking, spark, hot surface or static source near; one maker asks for ten metres. Others in the area are told.</source>
      <translation>Keine Flamme, kein Rauchen, Funke, heiße Fläche oder statische Quelle in der Nähe; ein Hersteller verlangt zehn Meter. Andere im Bereich wissen Bescheid.</translation>
    </message>
    <message>
      <source>No fluorinated gas as a tracer; nitrogen, or nitrogen with a trace of hydrogen made for it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No fluorinated or other organohalogen gas as a tracer; nitrogen, or nitrogen with a gas that is none.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No gas density of {name} there: {refused}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No halide torch, and no cleaning agent with chlorine on copper joints.</source>
      <translation>Keine Halogenlampe, kein chlorhaltiges Reinigungsmittel an Kupferverbindungen.</translation>
    </message>
    <message>
      <source>no hose, closed at the equipment</source>
      <translation>kein Schlauch, an der Anlage geschlossen</translation>
    </message>
    <message>
      <source>No instruments yet. A weigh-in asks for a scale with its resolution, a test for its gauge. Press New instrument to put the first on the register.</source>
      <translation>Noch keine Messgeräte. Ein Einwiegen verlangt eine Waage mit ihrer Auflösung, eine Probe ihr Messgerät. „Neues Messgerät“ nimmt das erste ins Verzeichnis.</translation>
    </message>
    <message>
      <source>No job here fits. Look for another word, or among closed jobs.</source>
      <translation>Hier passt kein Auftrag. Ein anderes Wort suchen oder unter den abgeschlossenen.</translation>
    </message>
    <message>
      <source>No jobs yet. A job is one visit or repair on one equipment, from the nameplate to the label. Press New job (Ctrl+N) to start the first.</source>
      <translation>Noch keine Aufträge. Ein Auftrag ist ein Besuch oder eine Reparatur an einer Anlage, vom Typenschild bis zum Aufkleber. Mit „Neuer Auftrag“ (Strg+N) den ersten beginnen.</translation>
    </message>
    <message>
      <source>No leak repair regulation binds it.</source>
      <translation>Keine Vorschrift zur Leckreparatur bindet sie.</translation>
    </message>
    <message>
      <source>no leak seen</source>
      <translation>kein Leck gesehen</translation>
    </message>
    <message>
      <source>No mass moved in this period. Each gram received, charged, recovered or returned stands here once it is signed. Choose another period, or sign a step on the Bench.</source>
      <translation>In diesem Zeitraum wurde keine Masse bewegt. Jedes zugegangene, gefüllte, abgesaugte oder zurückgegebene Gramm steht hier, sobald es abgezeichnet ist. Einen anderen Zeitraum wählen oder an der Werkbank einen Schritt abzeichnen.</translation>
    </message>
    <message>
      <source>No more than the nameplate charge goes in, by weight.</source>
      <translation>Nach Gewicht kommt nicht mehr als die Füllmenge des Typenschilds hinein.</translation>
    </message>
    <message>
      <source>No number in this line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No passphrase was set; set one first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>no password supplied</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No photo yet. Say what it shows, then add a file, paste a picture, or drag one here: nameplate, leak, label.</source>
      <translation>Noch kein Foto. Sagen, was es zeigt, dann eine Datei hinzufügen, ein Bild einfügen oder hierher ziehen: Typenschild, Leck, Aufkleber.</translation>
    </message>
    <message>
      <source>No printer is set up.</source>
      <translation>Es ist kein Drucker eingerichtet.</translation>
    </message>
    <message>
      <source>No recovery level for pressure class “{pressure_class}” at this charge; expected very high, high, medium or low.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>no row for pressure class “{name}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No row is a verdict: readings support a fault or speak against it, none proves it.</source>
      <translation>Keine Zeile ist ein Urteil: Ablesungen sprechen für oder gegen einen Fehler, keine beweist ihn.</translation>
    </message>
    <message>
      <source>No rule set “{name}”; expected one of {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No saturation curves are stored for “{name}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>no start yet</source>
      <translation>noch kein Anfang</translation>
    </message>
    <message>
      <source>No stop reading yet: fill in the charge, what stands on the scale and the hose.</source>
      <translation>Noch keine Stoppanzeige: Füllmenge, Anzeige der Waage und Schlauch ausfüllen.</translation>
    </message>
    <message>
      <source>no threshold</source>
      <translation>kein Schwellenwert</translation>
    </message>
    <message>
      <source>No: temperatures only, system sealed.</source>
      <translation>Nein: nur Temperaturen, System geschlossen.</translation>
    </message>
    <message>
      <source>nobody chosen yet</source>
      <translation>noch niemand gewählt</translation>
    </message>
    <message>
      <source>Non-refillable containers are banned; a residue is recovered before disposal.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>non-refillable-refilled</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>none</source>
      <translation>keine</translation>
    </message>
    <message>
      <source>none known here</source>
      <translation>hier keine bekannt</translation>
    </message>
    <message>
      <source>None of the {listed} places of a {kind} was searched.</source>
      <translation>Keine der {listed} Stellen ({kind}) wurde abgesucht.</translation>
    </message>
    <message>
      <source>none owed</source>
      <translation>keine geschuldet</translation>
    </message>
    <message>
      <source>none where there should be</source>
      <translation>keiner, wo welcher sein sollte</translation>
    </message>
    <message>
      <source>none yet</source>
      <translation>noch keine</translation>
    </message>
    <message>
      <source>not</source>
      <translation>nicht</translation>
    </message>
    <message>
      <source>not a key here; expected one of {hints}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not a key here; expected one of {identity}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not above, design pressure of the {lowest}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not asked for this job now</source>
      <translation>für diesen Auftrag jetzt nicht verlangt</translation>
    </message>
    <message>
      <source>Not at the drier; a capillary tube can still be blocked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not booked</source>
      <translation>nicht gebucht</translation>
    </message>
    <message>
      <source>not counted yet</source>
      <translation>noch nicht gezählt</translation>
    </message>
    <message>
      <source>Not filled after the due date; one filled before it may be used up.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not flammable</source>
      <translation>nicht brennbar</translation>
    </message>
    <message>
      <source>Not for a leak</source>
      <translation>Nicht wegen eines Lecks</translation>
    </message>
    <message>
      <source>not given</source>
      <translation>nicht angegeben</translation>
    </message>
    <message>
      <source>not held long enough</source>
      <translation>nicht lange genug gehalten</translation>
    </message>
    <message>
      <source>not holding temperature</source>
      <translation>hält die Temperatur nicht</translation>
    </message>
    <message>
      <source>not in the register</source>
      <translation>nicht im Verzeichnis</translation>
    </message>
    <message>
      <source>Not judged yet</source>
      <translation>Noch nicht beurteilt</translation>
    </message>
    <message>
      <source>not known</source>
      <translation>nicht bekannt</translation>
    </message>
    <message>
      <source>Not made yet: look at the marked fields.</source>
      <translation>Noch nicht angelegt: die markierten Felder ansehen.</translation>
    </message>
    <message>
      <source>not met</source>
      <translation>nicht erreicht</translation>
    </message>
    <message>
      <source>Not needed</source>
      <translation>Nicht nötig</translation>
    </message>
    <message>
      <source>not needed</source>
      <translation>nicht nötig</translation>
    </message>
    <message>
      <source>Not needed ({reason}); signed</source>
      <translation>Nicht nötig ({reason}); abgezeichnet</translation>
    </message>
    <message>
      <source>not opened</source>
      <translation>nicht geöffnet</translation>
    </message>
    <message>
      <source>not over</source>
      <translation>nicht darüber</translation>
    </message>
    <message>
      <source>not part of a figure; expected {known}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not proven</source>
      <translation>nicht bewiesen</translation>
    </message>
    <message>
      <source>Not saved yet. Save it, or cancel once more to throw it away.</source>
      <translation>Noch nicht gespeichert. Speichern, oder noch einmal abbrechen, um es zu verwerfen.</translation>
    </message>
    <message>
      <source>not shown</source>
      <translation>nicht gezeigt</translation>
    </message>
    <message>
      <source>not suitable</source>
      <translation>nicht geeignet</translation>
    </message>
    <message>
      <source>not understood</source>
      <translation>nicht verstanden</translation>
    </message>
    <message>
      <source>not within reckoning</source>
      <translation>nicht berechenbar</translation>
    </message>
    <message>
      <source>Not worked out anew: look at the marked fields.</source>
      <translation>Nicht neu berechnet: die markierten Felder ansehen.</translation>
    </message>
    <message>
      <source>not yet decided</source>
      <translation>noch nicht entschieden</translation>
    </message>
    <message>
      <source>not-above</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not-needed</source>
      <translation>nicht nötig</translation>
    </message>
    <message>
      <source>Note</source>
      <translation>Bemerkung</translation>
    </message>
    <message>
      <source>note</source>
      <translation>Hinweis</translation>
    </message>
    <message>
      <source>notes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>nothing</source>
      <translation>nichts</translation>
    </message>
    <message>
      <source>nothing added</source>
      <translation>nichts nachgefüllt</translation>
    </message>
    <message>
      <source>Nothing added yet.</source>
      <translation>Noch nichts nachgefüllt.</translation>
    </message>
    <message>
      <source>nothing charged, recovered or released</source>
      <translation>nichts gefüllt, abgesaugt oder abgelassen</translation>
    </message>
    <message>
      <source>Nothing comes from {port}; is the instrument on, and set to send by itself?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing else is, or was, in the recovery cylinder; refrigerants are not mixed.</source>
      <translation>In der Absaugflasche ist und war nichts anderes; Kältemittel werden nicht gemischt.</translation>
    </message>
    <message>
      <source>Nothing has moved in or out of this cylinder yet. Receive it, or weigh it, to begin its history.</source>
      <translation>In diese Flasche ist noch nichts hinein- oder herausgekommen. Zugang buchen oder wiegen, um ihre Geschichte zu beginnen.</translation>
    </message>
    <message>
      <source>Nothing here fits. Look for another word.</source>
      <translation>Hier passt nichts. Ein anderes Wort suchen.</translation>
    </message>
    <message>
      <source>Nothing in this register yet. {purpose} Press New to make the first.</source>
      <translation>Noch nichts in diesem Verzeichnis. {purpose} „Neu“ legt das erste an.</translation>
    </message>
    <message>
      <source>Nothing is due. Repairs, tests and inspections of leaking equipment, calibrations, requalifications and certificates stand here by their day.</source>
      <translation>Nichts ist fällig. Reparaturen, Prüfungen und Inspektionen undichter Anlagen, Kalibrierungen, wiederkehrende Prüfungen und Zertifikate stehen hier nach ihrem Tag.</translation>
    </message>
    <message>
      <source>Nothing is missing that the scale could tell; neither a leak nor tightness shows.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing is recorded here yet, so there is nothing to hand over.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing is typed in: {titles}. Why are they not needed?</source>
      <translation>Nichts eingegeben in: {titles}. Warum werden sie nicht gebraucht?</translation>
    </message>
    <message>
      <source>nothing left in the system</source>
      <translation>nichts mehr im System</translation>
    </message>
    <message>
      <source>nothing missing within the doubt</source>
      <translation>nichts fehlt innerhalb der Unsicherheit</translation>
    </message>
    <message>
      <source>Nothing moved in this period.</source>
      <translation>In diesem Zeitraum wurde nichts bewegt.</translation>
    </message>
    <message>
      <source>Nothing new: all {known} entries were here already.</source>
      <translation>Nichts Neues: alle {known} Einträge waren schon hier.</translation>
    </message>
    <message>
      <source>Nothing of a shop can be read in {sources}, nor in a backup of it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing to tick until the refrigerant is known.</source>
      <translation>Nichts abzuhaken, solange das Kältemittel nicht bekannt ist.</translation>
    </message>
    <message>
      <source>Nothing was charged in this period, and nothing was missed.</source>
      <translation>In diesem Zeitraum wurde nichts gefüllt und nichts fehlte.</translation>
    </message>
    <message>
      <source>Nothing was found, but it {check}: {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing was put back: this login has no right to that. Ask the shop's owner.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing was recorded in {place}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing was recorded: the signature of {name} takes a passphrase.{missing}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing was recorded: {path} {what}. A drive was taken away, or a tool that keeps folders the same replaced it. Leave what is typed on the screen, put the file back, and open the shop again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing was signed in this period. Choose another.</source>
      <translation>In diesem Zeitraum wurde nichts abgezeichnet. Einen anderen wählen.</translation>
    </message>
    <message>
      <source>Nothing weighed yet</source>
      <translation>Noch nichts gewogen</translation>
    </message>
    <message>
      <source>nothing; it sends by itself</source>
      <translation>nichts; es sendet von selbst</translation>
    </message>
    <message>
      <source>now</source>
      <translation>jetzt</translation>
    </message>
    <message>
      <source>Now add a file, paste a picture, or drag one here.</source>
      <translation>Jetzt eine Datei hinzufügen, ein Bild einfügen oder hierher ziehen.</translation>
    </message>
    <message>
      <source>null</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Number</source>
      <translation>Nummer</translation>
    </message>
    <message>
      <source>number</source>
      <translation>Zahl</translation>
    </message>
    <message>
      <source>nut cracks, torque</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>odd</source>
      <translation>ungerade</translation>
    </message>
    <message>
      <source>of bench {bench}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Of that limit the scale</source>
      <translation>Von dieser Grenze die Waage</translation>
    </message>
    <message>
      <source>of the ledger</source>
      <translation>des Bestandsbuchs</translation>
    </message>
    <message>
      <source>Of the reading</source>
      <translation>Von der Ablesung</translation>
    </message>
    <message>
      <source>of the scale</source>
      <translation>der Waage</translation>
    </message>
    <message>
      <source>of the shop</source>
      <translation>von der Werkstatt</translation>
    </message>
    <message>
      <source>Of the table {name} not all can be read.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>of what was charged</source>
      <translation>des Gefüllten</translation>
    </message>
    <message>
      <source>off</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>officer</source>
      <translation>Beauftragter</translation>
    </message>
    <message>
      <source>oil marks</source>
      <translation>Ölspuren</translation>
    </message>
    <message>
      <source>Oil separator, reservoir, floats</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>oil traces by eye</source>
      <translation>Ölspuren nach Augenschein</translation>
    </message>
    <message>
      <source>oil-system</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>on each circuit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>on the roof: wind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>On the scale</source>
      <translation>Auf der Waage</translation>
    </message>
    <message>
      <source>one</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>One for every appliance of a facility; while none is chosen both count.</source>
      <translation>Eine für jede Anlage eines Standorts; solange keine gewählt ist, zählen beide.</translation>
    </message>
    <message>
      <source>One page: the shop's name, units, rule set, your name and certificate.</source>
      <translation>Eine Seite: Name der Werkstatt, Einheiten, Regelwerk, Ihr Name und Zertifikat.</translation>
    </message>
    <message>
      <source>One refrigerant circuit: what its nameplate says and which rules see in it.</source>
      <translation>Ein Kältekreislauf: was sein Typenschild sagt und was die Regeln in ihm sehen.</translation>
    </message>
    <message>
      <source>one thing or two</source>
      <translation>eines oder zwei</translation>
    </message>
    <message>
      <source>One visit or repair on one equipment.</source>
      <translation>Ein Besuch oder eine Reparatur an einer Anlage.</translation>
    </message>
    <message>
      <source>only at the inlet</source>
      <translation>nur am Eintritt</translation>
    </message>
    <message>
      <source>Only its owner, {owner}, does that to the shop in {database}; this login is {login}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>open</source>
      <translation>offen</translation>
    </message>
    <message>
      <source>open jobs</source>
      <translation>offene Aufträge</translation>
    </message>
    <message>
      <source>open machines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>open this flag and say how it was settled</source>
      <translation>diese Meldung öffnen und sagen, wie sie geklärt wurde</translation>
    </message>
    <message>
      <source>opened</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>opened for major repair</source>
      <translation>zur größeren Reparatur geöffnet</translation>
    </message>
    <message>
      <source>opened for repair</source>
      <translation>zur Reparatur geöffnet</translation>
    </message>
    <message>
      <source>opening</source>
      <translation>wird geöffnet</translation>
    </message>
    <message>
      <source>Opening the port.</source>
      <translation>Anschluss wird geöffnet.</translation>
    </message>
    <message>
      <source>Opening the sample shop. The first time it is made, which takes a few seconds …</source>
      <translation>Die Beispielwerkstatt wird geöffnet. Beim ersten Mal wird sie angelegt, das dauert einige Sekunden …</translation>
    </message>
    <message>
      <source>Opening the shop's records …</source>
      <translation>Die Aufzeichnungen der Werkstatt werden geöffnet …</translation>
    </message>
    <message>
      <source>Opening {port}.</source>
      <translation>{port} wird geöffnet.</translation>
    </message>
    <message>
      <source>openpty</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Or bring every entry that can be read, here or in a backup, into a new file. This file is only read.</source>
      <translation>Oder jeden lesbaren Eintrag, von hier oder aus einer Sicherung, in eine neue Datei bringen. Diese Datei wird nur gelesen.</translation>
    </message>
    <message>
      <source>or hose volume</source>
      <translation>oder Schlauchvolumen</translation>
    </message>
    <message>
      <source>Origin</source>
      <translation>Herkunft</translation>
    </message>
    <message>
      <source>origin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>other</source>
      <translation>andere</translation>
    </message>
    <message>
      <source>other refrigerant</source>
      <translation>anderes Kältemittel</translation>
    </message>
    <message>
      <source>ounce</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ounce|ounces|oz.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>out along the suction line</source>
      <translation>hinaus auf die Saugleitung</translation>
    </message>
    <message>
      <source>out of service</source>
      <translation>außer Betrieb</translation>
    </message>
    <message>
      <source>Outdoor unit's stop valves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>outdoor-valves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>outdoors</source>
      <translation>im Freien</translation>
    </message>
    <message>
      <source>Outdoors, or air is moving through before work begins and until it ends; ammonia rises, heavier gases sink.</source>
      <translation>Im Freien, oder Luft strömt vor Beginn und bis zum Ende; Ammoniak steigt, schwerere Gase sinken.</translation>
    </message>
    <message>
      <source>Outdoors, or air is moving through before work begins and until it ends; vapour sinks and gathers in pits, drains and under cabinets.</source>
      <translation>Im Freien, oder Luft strömt vor Beginn und bis zum Ende; Dampf sinkt und sammelt sich in Gruben, Abläufen und unter Geräten.</translation>
    </message>
    <message>
      <source>outside</source>
      <translation>außen</translation>
    </message>
    <message>
      <source>over</source>
      <translation>darüber</translation>
    </message>
    <message>
      <source>over ambient</source>
      <translation>über Umgebung</translation>
    </message>
    <message>
      <source>over limit, {share:.0f} %</source>
      <translation>über der Grenze, {share:.0f} %</translation>
    </message>
    <message>
      <source>over nameplate</source>
      <translation>über Typenschild</translation>
    </message>
    <message>
      <source>Over nameplate by {size}: {charged} in, nameplate {nameplate}, tolerance {tolerance}. Recover and weigh in again; do not leave overcharged.</source>
      <translation>Über Typenschild um {size}: {charged} darin, Typenschild {nameplate}, Toleranz {tolerance}. Absaugen und neu einwiegen; nicht überfüllt lassen.</translation>
    </message>
    <message>
      <source>Over nameplate by {text} {doubt}</source>
      <translation>Über Typenschild um {text} {doubt}</translation>
    </message>
    <message>
      <source>over, seen to</source>
      <translation>darüber, bearbeitet</translation>
    </message>
    <message>
      <source>over-charge-limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>over-nameplate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>overcharge</source>
      <translation>Überfüllung</translation>
    </message>
    <message>
      <source>overdrawn</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>overdue</source>
      <translation>überfällig</translation>
    </message>
    <message>
      <source>overdue by {span}</source>
      <translation>überfällig seit {span}</translation>
    </message>
    <message>
      <source>override</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>owed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>own dates</source>
      <translation>eigene Daten</translation>
    </message>
    <message>
      <source>own-entries</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Owner</source>
      <translation>Eigentümer</translation>
    </message>
    <message>
      <source>owner</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Owner or operator</source>
      <translation>Eigentümer oder Betreiber</translation>
    </message>
    <message>
      <source>oz / year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>oz | °F</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>oz/y|oz/year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ozone-depleting</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>P&amp;erson</source>
      <translation>Pe&amp;rson</translation>
    </message>
    <message>
      <source>P&amp;rint…</source>
      <translation>D&amp;rucken…</translation>
    </message>
    <message>
      <source>Pa / minute</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Pa&amp;per</source>
      <translation>&amp;Papier</translation>
    </message>
    <message>
      <source>Pages of the guide</source>
      <translation>Seiten der Anleitung</translation>
    </message>
    <message>
      <source>Paper</source>
      <translation>Papier</translation>
    </message>
    <message>
      <source>paper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>papers</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>paplay</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Parity</source>
      <translation>Parität</translation>
    </message>
    <message>
      <source>parity</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Part</source>
      <translation>Teil</translation>
    </message>
    <message>
      <source>part</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>part of a charge</source>
      <translation>Teil einer Füllung</translation>
    </message>
    <message>
      <source>Parts</source>
      <translation>Teile</translation>
    </message>
    <message>
      <source>parts</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Parts came on</source>
      <translation>Teile kamen am</translation>
    </message>
    <message>
      <source>parts not available in time</source>
      <translation>Teile nicht rechtzeitig erhältlich</translation>
    </message>
    <message>
      <source>Parts to be fitted are the maker's own or certified for this refrigerant; sealed electrical parts keep their grade.</source>
      <translation>Einzubauende Teile sind vom Hersteller oder für dieses Kältemittel zugelassen; gekapselte elektrische Teile behalten ihre Schutzart.</translation>
    </message>
    <message>
      <source>pascal / minute</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>pascal|Pa(a)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>passed</source>
      <translation>bestanden</translation>
    </message>
    <message>
      <source>passphrase</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Passphrase set; the signature of {currenttext} is unlocked.</source>
      <translation>Kennwort gesetzt; die Unterschrift von {currenttext} ist entsperrt.</translation>
    </message>
    <message>
      <source>passphrase-set</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>passphrases</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>past</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>pasted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>path</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>PDF (*.pdf)</source>
      <translation>PDF (*.pdf)</translation>
    </message>
    <message>
      <source>percent</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>percentage</source>
      <translation>Prozentsatz</translation>
    </message>
    <message>
      <source>percent|per cent|pct</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Period</source>
      <translation>Zeitraum</translation>
    </message>
    <message>
      <source>Period and filter&amp;s</source>
      <translation>Zeitraum und Filte&amp;r</translation>
    </message>
    <message>
      <source>Person</source>
      <translation>Person</translation>
    </message>
    <message>
      <source>person</source>
      <translation>Person</translation>
    </message>
    <message>
      <source>Photos</source>
      <translation>Fotos</translation>
    </message>
    <message>
      <source>Photos ({files})</source>
      <translation>Fotos ({files})</translation>
    </message>
    <message>
      <source>Photos of this job</source>
      <translation>Fotos dieses Auftrags</translation>
    </message>
    <message>
      <source>Photos…</source>
      <translation>Fotos…</translation>
    </message>
    <message>
      <source>picture</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Place</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>place</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Place | str</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>place, refrigerant</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>places</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Places searched</source>
      <translation>Abgesuchte Stellen</translation>
    </message>
    <message>
      <source>plan carried out</source>
      <translation>Plan ausgeführt</translation>
    </message>
    <message>
      <source>plan on file</source>
      <translation>Plan liegt vor</translation>
    </message>
    <message>
      <source>Plans and reports</source>
      <translation>Pläne und Berichte</translation>
    </message>
    <message>
      <source>point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>poor airflow or iced coil</source>
      <translation>schlechter Luftstrom oder vereister Verdampfer</translation>
    </message>
    <message>
      <source>Poor airflow would raise the difference.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Port</source>
      <translation>Anschluss</translation>
    </message>
    <message>
      <source>Port…</source>
      <translation>Anschluss…</translation>
    </message>
    <message>
      <source>position</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>posix</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>postgres</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>postgresql</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>pound</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>pound / foot ** 3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Power is off and locked, capacitors are discharged, and no live unsealed part is touched.</source>
      <translation>Strom ist aus und gesichert, Kondensatoren sind entladen, kein spannungführendes offenes Teil wird berührt.</translation>
    </message>
    <message>
      <source>Prac&amp;tise</source>
      <translation>Ü&amp;ben</translation>
    </message>
    <message>
      <source>Practical limit</source>
      <translation>Praktischer Grenzwert</translation>
    </message>
    <message>
      <source>practical-limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>practice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Practice instruments need pseudo-terminals, which this system does not have; expected Linux or macOS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Press “{begin}” at the start, then read the gauge.</source>
      <translation>Zum Beginn „{begin}“ drücken, dann das Messgerät ablesen.</translation>
    </message>
    <message>
      <source>Pressure</source>
      <translation>Druck</translation>
    </message>
    <message>
      <source>pressure</source>
      <translation>Druck</translation>
    </message>
    <message>
      <source>Pressure [{pressure}]</source>
      <translation>Druck [{pressure}]</translation>
    </message>
    <message>
      <source>Pressure at end</source>
      <translation>Druck am Ende</translation>
    </message>
    <message>
      <source>Pressure at start</source>
      <translation>Druck am Anfang</translation>
    </message>
    <message>
      <source>Pressure class at 104 °F</source>
      <translation>Druckklasse bei 104 °F</translation>
    </message>
    <message>
      <source>pressure gauge</source>
      <translation>Druckmessgerät</translation>
    </message>
    <message>
      <source>Pressure in</source>
      <translation>Druck in</translation>
    </message>
    <message>
      <source>Pressure in the hose</source>
      <translation>Druck im Schlauch</translation>
    </message>
    <message>
      <source>Pressure test</source>
      <translation>Druckprobe</translation>
    </message>
    <message>
      <source>pressure test</source>
      <translation>Druckprobe</translation>
    </message>
    <message>
      <source>Pressure test with nitrogen passed before refrigerant goes in.</source>
      <translation>Druckprobe mit Stickstoff bestanden, bevor Kältemittel hineinkommt.</translation>
    </message>
    <message>
      <source>Pressure test: {verdict}; {drop} beyond what temperature explains, ±{doubt}.</source>
      <translation>Druckprobe: {verdict}; {drop} über das hinaus, was die Temperatur erklärt, ±{doubt}.</translation>
    </message>
    <message>
      <source>Pressure {moved} by {size} beyond what temperature explains. {advice} before going on.</source>
      <translation>Druck {moved} um {size} mehr, als die Temperatur erklärt. {advice}, bevor es weitergeht.</translation>
    </message>
    <message>
      <source>pressure, {unit}</source>
      <translation>Druck, {unit}</translation>
    </message>
    <message>
      <source>pressure-controls</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Pressure-temperature chart</source>
      <translation>Druck-Temperatur-Diagramm</translation>
    </message>
    <message>
      <source>pressure-test-missing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Presumed lost</source>
      <translation>Vermutlich verloren</translation>
    </message>
    <message>
      <source>presumed lost</source>
      <translation>vermutlich verloren</translation>
    </message>
    <message>
      <source>Preview</source>
      <translation>Vorschau</translation>
    </message>
    <message>
      <source>Previous step</source>
      <translation>Voriger Schritt</translation>
    </message>
    <message>
      <source>Print</source>
      <translation>Drucken</translation>
    </message>
    <message>
      <source>Print &amp;now</source>
      <translation>Jetzt &amp;drucken</translation>
    </message>
    <message>
      <source>printed filling ratio</source>
      <translation>aufgedruckter Füllfaktor</translation>
    </message>
    <message>
      <source>Print…</source>
      <translation>Drucken…</translation>
    </message>
    <message>
      <source>Process stub pinched and sealed; no service fitting left on that fits non-flammable gauges.</source>
      <translation>Füllstutzen abgequetscht und verschlossen; kein Serviceanschluss bleibt, an den Messgeräte für Nichtbrennbares passen.</translation>
    </message>
    <message>
      <source>Process stub resealed, service fittings off</source>
      <translation>Füllstutzen verschlossen, Serviceanschlüsse ab</translation>
    </message>
    <message>
      <source>Process stubs and their seals</source>
      <translation>Füllstutzen und ihre Verschlüsse</translation>
    </message>
    <message>
      <source>process valve core</source>
      <translation>Ventileinsatz am Füllventil</translation>
    </message>
    <message>
      <source>process-stubs</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Progress</source>
      <translation>Fortschritt</translation>
    </message>
    <message>
      <source>prompt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>properties</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>protection</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>psi</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>psi(a)|psiabs|psi(abs)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>psi(g)|psigauge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>psia</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>public</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Pulled down to</source>
      <translation>Evakuiert bis</translation>
    </message>
    <message>
      <source>Pulled down to {pulled}, short of {wanted}. Pull on.</source>
      <translation>Evakuiert bis {pulled}, verlangt sind {wanted}. Weiter evakuieren.</translation>
    </message>
    <message>
      <source>Pulled down, isolated, and watched: dry and tight, or not.</source>
      <translation>Evakuiert, abgesperrt und beobachtet: trocken und dicht, oder nicht.</translation>
    </message>
    <message>
      <source>pulled-to</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>pump</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Pump ran</source>
      <translation>Pumpe lief</translation>
    </message>
    <message>
      <source>pure</source>
      <translation>rein</translation>
    </message>
    <message>
      <source>Purge: vacuum broken with nitrogen, filled to working pressure, let out, pulled down; repeated until no refrigerant is left.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Put back within a year it is no leak, as far as no more goes in.</source>
      <translation>Binnen eines Jahres zurückgefüllt ist es kein Leck, soweit nicht mehr hineinkommt.</translation>
    </message>
    <message>
      <source>Put off to {extended_to}: {how}.</source>
      <translation>Aufgeschoben bis {extended_to}: {how}.</translation>
    </message>
    <message>
      <source>queue.SimpleQueue[str]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>R&amp;eference</source>
      <translation>Nach&amp;schlagen</translation>
    </message>
    <message>
      <source>rack</source>
      <translation>Verbundanlage</translation>
    </message>
    <message>
      <source>rack or chiller</source>
      <translation>Verbundanlage oder Kaltwassersatz</translation>
    </message>
    <message>
      <source>radiological contamination</source>
      <translation>radiologische Belastung</translation>
    </message>
    <message>
      <source>Raise the pressure with dry nitrogen, within the design pressure.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ran</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ran since the repair</source>
      <translation>Seit der Reparatur gelaufen</translation>
    </message>
    <message>
      <source>Ran&amp;ge</source>
      <translation>Be&amp;reich</translation>
    </message>
    <message>
      <source>Range, high</source>
      <translation>Bereich, oben</translation>
    </message>
    <message>
      <source>Range, low</source>
      <translation>Bereich, unten</translation>
    </message>
    <message>
      <source>rate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Rated current</source>
      <translation>Nennstrom</translation>
    </message>
    <message>
      <source>rcl</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Re&amp;frigerant</source>
      <translation>&amp;Kältemittel</translation>
    </message>
    <message>
      <source>Re&amp;gisters</source>
      <translation>Ver&amp;zeichnisse</translation>
    </message>
    <message>
      <source>Re&amp;turn</source>
      <translation>&amp;Rückgabe</translation>
    </message>
    <message>
      <source>Read again</source>
      <translation>Noch einmal ablesen</translation>
    </message>
    <message>
      <source>Read from</source>
      <translation>Gelesen von</translation>
    </message>
    <message>
      <source>Read from its port…</source>
      <translation>Vom Anschluss lesen…</translation>
    </message>
    <message>
      <source>Read the gauge now: {clock}</source>
      <translation>Jetzt ablesen: {clock}</translation>
    </message>
    <message>
      <source>Read the pressure first.</source>
      <translation>Zuerst den Druck ablesen.</translation>
    </message>
    <message>
      <source>Read, not typed</source>
      <translation>Gelesen, nicht eingegeben</translation>
    </message>
    <message>
      <source>Reader</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Reading</source>
      <translation>Anzeige</translation>
    </message>
    <message>
      <source>reading</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Reading every</source>
      <translation>Ablesen alle</translation>
    </message>
    <message>
      <source>reading wanted</source>
      <translation>Anzeige gesucht</translation>
    </message>
    <message>
      <source>Reading what can be read …</source>
      <translation>Lese, was lesbar ist …</translation>
    </message>
    <message>
      <source>readings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Readings before anything is changed.</source>
      <translation>Ablesungen, bevor etwas verändert wird.</translation>
    </message>
    <message>
      <source>Readings can not settle the charge of a critically charged sealed system; recovering and weighing in does.</source>
      <translation>Ablesungen können die Füllung eines kritisch gefüllten geschlossenen Systems nicht klären; Absaugen und Einwiegen schon.</translation>
    </message>
    <message>
      <source>Readings entered</source>
      <translation>Ablesungen eingegeben</translation>
    </message>
    <message>
      <source>Readings from a file</source>
      <translation>Ablesungen aus einer Datei</translation>
    </message>
    <message>
      <source>Readings meanwhile</source>
      <translation>Ablesungen dazwischen</translation>
    </message>
    <message>
      <source>Readings with the work done.</source>
      <translation>Ablesungen nach getaner Arbeit.</translation>
    </message>
    <message>
      <source>reason</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Reason of the difference</source>
      <translation>Grund der Differenz</translation>
    </message>
    <message>
      <source>Reason of the visit</source>
      <translation>Grund des Besuchs</translation>
    </message>
    <message>
      <source>Reason to fill above the limit</source>
      <translation>Grund, über die Grenze zu füllen</translation>
    </message>
    <message>
      <source>Recei&amp;ve</source>
      <translation>&amp;Zugang</translation>
    </message>
    <message>
      <source>Receive</source>
      <translation>Zugang</translation>
    </message>
    <message>
      <source>receive</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Received</source>
      <translation>Zugang</translation>
    </message>
    <message>
      <source>received</source>
      <translation>Zugang</translation>
    </message>
    <message>
      <source>receiver</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Receiver, name and address</source>
      <translation>Empfänger, Name und Anschrift</translation>
    </message>
    <message>
      <source>Receiver, sight glass, level controls</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>reclaimed</source>
      <translation>aufgearbeitet</translation>
    </message>
    <message>
      <source>Reclaimed or recycled by</source>
      <translation>Aufgearbeitet oder recycelt von</translation>
    </message>
    <message>
      <source>reclaimer</source>
      <translation>Aufarbeiter</translation>
    </message>
    <message>
      <source>Record</source>
      <translation>Aufzeichnen</translation>
    </message>
    <message>
      <source>Record reversal</source>
      <translation>Stornierung aufzeichnen</translation>
    </message>
    <message>
      <source>Record: {form}</source>
      <translation>Aufzeichnen: {form}</translation>
    </message>
    <message>
      <source>Recorded</source>
      <translation>Aufgezeichnet</translation>
    </message>
    <message>
      <source>recorded</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Recorded: what was signed when the server went away stands as entry {entry_number} of bench {bench}. Nothing was recorded twice; look at it before you go on.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Records</source>
      <translation>Aufzeichnungen</translation>
    </message>
    <message>
      <source>records</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>records may be archived after this day</source>
      <translation>Aufzeichnungen dürfen nach diesem Tag ins Archiv</translation>
    </message>
    <message>
      <source>Recover; release only where the law of the place allows it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Recovered</source>
      <translation>Abgesaugt</translation>
    </message>
    <message>
      <source>recovered</source>
      <translation>abgesaugt</translation>
    </message>
    <message>
      <source>Recovered {mass}.</source>
      <translation>Abgesaugt {mass}.</translation>
    </message>
    <message>
      <source>Recovery</source>
      <translation>Absaugung</translation>
    </message>
    <message>
      <source>recovery</source>
      <translation>Absaugung</translation>
    </message>
    <message>
      <source>Recovery and disposal</source>
      <translation>Absaugung und Entsorgung</translation>
    </message>
    <message>
      <source>Recovery cylinder is labelled for this refrigerant, evacuated, cool, with working relief and shut-off valves, within its date, and never above its fill limit.</source>
      <translation>Die Absaugflasche ist für dieses Kältemittel gekennzeichnet, evakuiert, kühl, mit funktionierenden Sicherheits- und Absperrventilen, nicht abgelaufen und nie über ihrer Füllgrenze.</translation>
    </message>
    <message>
      <source>Recovery machine</source>
      <translation>Absauggerät</translation>
    </message>
    <message>
      <source>recovery machine</source>
      <translation>Absauggerät</translation>
    </message>
    <message>
      <source>Recovery machine is made for flammable refrigerant, in good order, and stands in moving air.</source>
      <translation>Das Absauggerät ist für brennbares Kältemittel gebaut, in Ordnung und steht in bewegter Luft.</translation>
    </message>
    <message>
      <source>recovery-level</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>recursive_triggers=ON</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>recycled</source>
      <translation>recycelt</translation>
    </message>
    <message>
      <source>Reference</source>
      <translation>Nachschlagen</translation>
    </message>
    <message>
      <source>reference</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Reference: {refrigerant}</source>
      <translation>Stoffwerte: {refrigerant}</translation>
    </message>
    <message>
      <source>Refillable</source>
      <translation>Wiederbefüllbar</translation>
    </message>
    <message>
      <source>refillable</source>
      <translation>wiederbefüllbar</translation>
    </message>
    <message>
      <source>Refrigerant</source>
      <translation>Kältemittel</translation>
    </message>
    <message>
      <source>refrigerant</source>
      <translation>Kältemittel</translation>
    </message>
    <message>
      <source>Refrigerant found</source>
      <translation>Gefundenes Kältemittel</translation>
    </message>
    <message>
      <source>Refrigerant is</source>
      <translation>Kältemittel ist</translation>
    </message>
    <message>
      <source>refrigerant unknown</source>
      <translation>Kältemittel nicht bekannt</translation>
    </message>
    <message>
      <source>refrigerated transport</source>
      <translation>Transportkälte</translation>
    </message>
    <message>
      <source>refrigeration</source>
      <translation>Kälte</translation>
    </message>
    <message>
      <source>refusal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Register</source>
      <translation>Verzeichnis</translation>
    </message>
    <message>
      <source>register</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>register changed</source>
      <translation>Verzeichnis geändert</translation>
    </message>
    <message>
      <source>register people and set their passphrases anew</source>
      <translation>Personen eintragen und ihre Kennwörter neu setzen</translation>
    </message>
    <message>
      <source>register row</source>
      <translation>Verzeichniszeile</translation>
    </message>
    <message>
      <source>register, id</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>register.{register}.{row_id}: this shop has other words for {row_id}; give it another id, or make both the same.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>registered</source>
      <translation>eingetragen</translation>
    </message>
    <message>
      <source>Registers</source>
      <translation>Verzeichnisse</translation>
    </message>
    <message>
      <source>regulated</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>regulations</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Regulator and relief fitted</source>
      <translation>Druckminderer und Sicherheitsventil angebracht</translation>
    </message>
    <message>
      <source>release-not-exempt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Released</source>
      <translation>Abgelassen</translation>
    </message>
    <message>
      <source>released</source>
      <translation>abgelassen</translation>
    </message>
    <message>
      <source>Released or lost</source>
      <translation>Abgelassen oder verloren</translation>
    </message>
    <message>
      <source>Released where allowed</source>
      <translation>Abgelassen, wo erlaubt</translation>
    </message>
    <message>
      <source>released where the law allows</source>
      <translation>abgelassen, wo das Gesetz es erlaubt</translation>
    </message>
    <message>
      <source>relief</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Relief valves and their vents</source>
      <translation>Sicherheitsventile und ihre Abblaseleitungen</translation>
    </message>
    <message>
      <source>Remarks</source>
      <translation>Bemerkungen</translation>
    </message>
    <message>
      <source>remarks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Remote condenser and its valves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>remote-condenser</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Remove</source>
      <translation>Entfernen</translation>
    </message>
    <message>
      <source>Remove line {number} of {group}</source>
      <translation>Zeile {number} von {group} entfernen</translation>
    </message>
    <message>
      <source>renewal of the certificate</source>
      <translation>Erneuerung des Zertifikats</translation>
    </message>
    <message>
      <source>Reopen</source>
      <translation>Wieder öffnen</translation>
    </message>
    <message>
      <source>Repair</source>
      <translation>Reparatur</translation>
    </message>
    <message>
      <source>repair</source>
      <translation>Reparatur</translation>
    </message>
    <message>
      <source>Repair needs an industrial process shutdown</source>
      <translation>Reparatur verlangt Abschalten eines Industrieprozesses</translation>
    </message>
    <message>
      <source>Repaired leak tested</source>
      <translation>Repariertes Leck geprüft</translation>
    </message>
    <message>
      <source>repeatability</source>
      <translation>Wiederholbarkeit</translation>
    </message>
    <message>
      <source>Repeatability of a scale</source>
      <translation>Wiederholbarkeit einer Waage</translation>
    </message>
    <message>
      <source>replace</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>replaced</source>
      <translation>ersetzt</translation>
    </message>
    <message>
      <source>replaced by entry {replaced_by_number}</source>
      <translation>ersetzt durch Eintrag {replaced_by_number}</translation>
    </message>
    <message>
      <source>replaces</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>replaces entry {replaces_number}</source>
      <translation>ersetzt Eintrag {replaces_number}</translation>
    </message>
    <message>
      <source>report sent</source>
      <translation>Bericht gesandt</translation>
    </message>
    <message>
      <source>reports</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Requalification</source>
      <translation>Wiederkehrende Prüfung</translation>
    </message>
    <message>
      <source>requalification</source>
      <translation>wiederkehrende Prüfung</translation>
    </message>
    <message>
      <source>Requalification due</source>
      <translation>Wiederkehrende Prüfung fällig</translation>
    </message>
    <message>
      <source>requalification {due_words}</source>
      <translation>Wiederkehrende Prüfung {due_words}</translation>
    </message>
    <message>
      <source>requalification-due</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>requalified</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>required</source>
      <translation>gefordert</translation>
    </message>
    <message>
      <source>Required recovery</source>
      <translation>Geforderte Absaugung</translation>
    </message>
    <message>
      <source>rescue</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Rescue into a new file</source>
      <translation>In eine neue Datei retten</translation>
    </message>
    <message>
      <source>rescued</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Reseal</source>
      <translation>Verschließen</translation>
    </message>
    <message>
      <source>resealed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>residential</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Residential and light commercial air conditioning and heat pumps.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Residential or light commercial AC</source>
      <translation>Klima für Wohnen oder kleines Gewerbe</translation>
    </message>
    <message>
      <source>resolution</source>
      <translation>Auflösung</translation>
    </message>
    <message>
      <source>Resolution and accuracy</source>
      <translation>Auflösung und Genauigkeit</translation>
    </message>
    <message>
      <source>Resolution of a gauge</source>
      <translation>Auflösung eines Messgeräts</translation>
    </message>
    <message>
      <source>Resolution of a scale</source>
      <translation>Auflösung einer Waage</translation>
    </message>
    <message>
      <source>restriction</source>
      <translation>Verengung</translation>
    </message>
    <message>
      <source>rests</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Result</source>
      <translation>Ergebnis</translation>
    </message>
    <message>
      <source>result</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>results</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>retired</source>
      <translation>außer Betrieb genommen</translation>
    </message>
    <message>
      <source>Retired on</source>
      <translation>Außer Betrieb genommen am</translation>
    </message>
    <message>
      <source>retirement</source>
      <translation>Außerbetriebnahme</translation>
    </message>
    <message>
      <source>retrofit</source>
      <translation>Umrüstung</translation>
    </message>
    <message>
      <source>retrofit or retirement plan</source>
      <translation>Umrüst- oder Stilllegungsplan</translation>
    </message>
    <message>
      <source>retrofit or retirement plan, if not repaired</source>
      <translation>Umrüst- oder Stilllegungsplan, falls nicht repariert</translation>
    </message>
    <message>
      <source>retrofitted or retired instead</source>
      <translation>stattdessen umgerüstet oder stillgelegt</translation>
    </message>
    <message>
      <source>Return</source>
      <translation>Enter</translation>
    </message>
    <message>
      <source>return</source>
      <translation>Rückgabe</translation>
    </message>
    <message>
      <source>Returned</source>
      <translation>Zurückgegeben</translation>
    </message>
    <message>
      <source>returned</source>
      <translation>zurückgegeben</translation>
    </message>
    <message>
      <source>reversal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Reverse</source>
      <translation>Stornieren</translation>
    </message>
    <message>
      <source>reversed-twice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>reverses</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Reversing valve</source>
      <translation>Umschaltventil</translation>
    </message>
    <message>
      <source>reversing-valve</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>rights on </source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>rise</source>
      <translation>Anstieg</translation>
    </message>
    <message>
      <source>ro&amp;immutable=1</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Role</source>
      <translation>Rolle</translation>
    </message>
    <message>
      <source>role</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Rolling</source>
      <translation>Gleitend</translation>
    </message>
    <message>
      <source>rolling average</source>
      <translation>gleitender Durchschnitt</translation>
    </message>
    <message>
      <source>rolling average, the higher</source>
      <translation>gleitender Durchschnitt, der höhere Wert</translation>
    </message>
    <message>
      <source>room not known</source>
      <translation>Platz nicht bekannt</translation>
    </message>
    <message>
      <source>root of the sum of squares</source>
      <translation>Wurzel der Quadratsumme</translation>
    </message>
    <message>
      <source>rose</source>
      <translation>stieg</translation>
    </message>
    <message>
      <source>rose more than its temperature explains</source>
      <translation>stieg mehr, als ihre Temperatur erklärt</translation>
    </message>
    <message>
      <source>row</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Rows</source>
      <translation>Zeilen</translation>
    </message>
    <message>
      <source>rubbing on brackets</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Rule</source>
      <translation>Regel</translation>
    </message>
    <message>
      <source>Rule file of the shop</source>
      <translation>Regeldatei der Werkstatt</translation>
    </message>
    <message>
      <source>Rule files (*.toml);;All files (*)</source>
      <translation>Regeldateien (*.toml);;Alle Dateien (*)</translation>
    </message>
    <message>
      <source>Rule set</source>
      <translation>Regelwerk</translation>
    </message>
    <message>
      <source>rule-file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Rules</source>
      <translation>Regelwerk</translation>
    </message>
    <message>
      <source>rules</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>running</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Running as normal since</source>
      <translation>Läuft wieder normal seit</translation>
    </message>
    <message>
      <source>runs</source>
      <translation>läuft</translation>
    </message>
    <message>
      <source>rwc</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>saddles and supports</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Safety</source>
      <translation>Sicherheit</translation>
    </message>
    <message>
      <source>safety</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Safety class</source>
      <translation>Sicherheitsklasse</translation>
    </message>
    <message>
      <source>Safety list</source>
      <translation>Sicherheitsliste</translation>
    </message>
    <message>
      <source>safety-list-incomplete</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>said</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>same</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>same-as</source>
      <translation>dasselbe</translation>
    </message>
    <message>
      <source>sans-serif</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>saturated vapour</source>
      <translation>gesättigter Dampf</translation>
    </message>
    <message>
      <source>Saturation of a refrigerant in any range and units, and what is known of it.</source>
      <translation>Sättigung eines Kältemittels in jedem Bereich und jeder Einheit, und was davon bekannt ist.</translation>
    </message>
    <message>
      <source>Saturation table</source>
      <translation>Sättigungstabelle</translation>
    </message>
    <message>
      <source>Save as PDF</source>
      <translation>Als PDF speichern</translation>
    </message>
    <message>
      <source>Saved: {path}.</source>
      <translation>Gespeichert: {path}.</translation>
    </message>
    <message>
      <source>Sc&amp;ale</source>
      <translation>&amp;Waage</translation>
    </message>
    <message>
      <source>Scale</source>
      <translation>Waage</translation>
    </message>
    <message>
      <source>scale</source>
      <translation>Waage</translation>
    </message>
    <message>
      <source>scale reading</source>
      <translation>Anzeige der Waage</translation>
    </message>
    <message>
      <source>scale too coarse to tell</source>
      <translation>Waage zu grob für ein Urteil</translation>
    </message>
    <message>
      <source>Scale too coarse to tell: off by {text} {doubt}</source>
      <translation>Waage zu grob für ein Urteil: Abweichung {text} {doubt}</translation>
    </message>
    <message>
      <source>Scale too coarse to tell: {difference} (±{doubt}) against a tolerance of {tolerance}. Use a finer scale.{finer}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>scale-too-coarse</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Scales, gauges, detectors and machines: what they can resolve, when they were last checked.</source>
      <translation>Waagen, Messgeräte, Suchgeräte und Maschinen: was sie auflösen, wann sie zuletzt geprüft wurden.</translation>
    </message>
    <message>
      <source>scfp</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>schema</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>scope</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Search above each joint first.</source>
      <translation>Zuerst über jeder Verbindung suchen.</translation>
    </message>
    <message>
      <source>Search low first, below each joint.</source>
      <translation>Zuerst unten suchen, unter jeder Verbindung.</translation>
    </message>
    <message>
      <source>Search without a find</source>
      <translation>Suche ohne Fund</translation>
    </message>
    <message>
      <source>search-not-proven</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Searched from below for gas heavier than air, with a method that has no flame and no spark.</source>
      <translation>Von unten gesucht, weil das Gas schwerer als Luft ist, mit einem Verfahren ohne Flamme und Funken.</translation>
    </message>
    <message>
      <source>Searched from the lowest point up</source>
      <translation>Von unten nach oben gesucht</translation>
    </message>
    <message>
      <source>searches</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>seasonal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>seasonal variance</source>
      <translation>saisonale Schwankung</translation>
    </message>
    <message>
      <source>seconds</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>sec|second|seconds|secs</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Seen by</source>
      <translation>Gesehen mit</translation>
    </message>
    <message>
      <source>Sees from</source>
      <translation>Sieht ab</translation>
    </message>
    <message>
      <source>self-contained cabinet</source>
      <translation>steckerfertiges Gerät</translation>
    </message>
    <message>
      <source>self-contained open</source>
      <translation>steckerfertig offen</translation>
    </message>
    <message>
      <source>self-contained with doors or drawers</source>
      <translation>steckerfertig mit Türen oder Schubladen</translation>
    </message>
    <message>
      <source>sensitivity</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Sensitivity of a detector</source>
      <translation>Empfindlichkeit eines Suchgeräts</translation>
    </message>
    <message>
      <source>separator</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Sequence[Photo]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>serial</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Serial line</source>
      <translation>Serielle Leitung</translation>
    </message>
    <message>
      <source>serial line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Serial number</source>
      <translation>Seriennummer</translation>
    </message>
    <message>
      <source>serial number</source>
      <translation>Seriennummer</translation>
    </message>
    <message>
      <source>service records</source>
      <translation>Serviceaufzeichnungen</translation>
    </message>
    <message>
      <source>service sheet, support line</source>
      <translation>Serviceblatt, Hotline</translation>
    </message>
    <message>
      <source>Service valves, cores and caps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>service-ban</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>service-valves</source>
      <translation>Serviceventile, Einsätze und Kappen</translation>
    </message>
    <message>
      <source>Servicing with this refrigerant of GWP {potential:g} is banned from {gwp_from} on since {since}. Use what the rules still allow; the text of the law decides.</source>
      <translation>Wartung mit diesem Kältemittel mit GWP {potential:g} ist ab {gwp_from} seit {since} verboten. Verwenden, was die Regeln noch erlauben; der Gesetzestext entscheidet.</translation>
    </message>
    <message>
      <source>set</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Set aside and close</source>
      <translation>Zurückstellen und abschließen</translation>
    </message>
    <message>
      <source>Set point</source>
      <translation>Sollwert</translation>
    </message>
    <message>
      <source>Setting</source>
      <translation>Einstellung</translation>
    </message>
    <message>
      <source>settings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Settings changed</source>
      <translation>Geänderte Einstellungen</translation>
    </message>
    <message>
      <source>Settle a conflict</source>
      <translation>Einen Widerspruch klären</translation>
    </message>
    <message>
      <source>settled</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Shaft seals and gaskets of compressors</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>shaft-seals</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>share</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Share recovered</source>
      <translation>Anteil abgesaugt</translation>
    </message>
    <message>
      <source>share-of-lfl</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Shield each joint and stop fans.</source>
      <translation>Jede Verbindung abschirmen und Lüfter anhalten.</translation>
    </message>
    <message>
      <source>shift</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Shift+F8 cautions</source>
      <translation>Umschalt+F8 Vorsicht</translation>
    </message>
    <message>
      <source>Shift+F8: all cautions of this step with their sources</source>
      <translation>Umschalt+F8: alle Vorsichten dieses Schritts mit ihren Quellen</translation>
    </message>
    <message>
      <source>Shop</source>
      <translation>Werkstatt</translation>
    </message>
    <message>
      <source>shop</source>
      <translation>Werkstatt</translation>
    </message>
    <message>
      <source>Shop files (*)</source>
      <translation>Werkstattdateien (*)</translation>
    </message>
    <message>
      <source>Shop…</source>
      <translation>Werkstatt…</translation>
    </message>
    <message>
      <source>Short of the nameplate</source>
      <translation>Fehlt zum Typenschild</translation>
    </message>
    <message>
      <source>Show &amp;large</source>
      <translation>&amp;Groß zeigen</translation>
    </message>
    <message>
      <source>shutdown</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>shutting down</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Side by side</source>
      <translation>Nebeneinander</translation>
    </message>
    <message>
      <source>sight glass, winter and summer</source>
      <translation>Schauglas, Winter und Sommer</translation>
    </message>
    <message>
      <source>Sign</source>
      <translation>Abzeichnen</translation>
    </message>
    <message>
      <source>sign steps of jobs and stock work</source>
      <translation>Schritte von Aufträgen und Bestandsarbeit abzeichnen</translation>
    </message>
    <message>
      <source>Sign the stock-take</source>
      <translation>Inventur abzeichnen</translation>
    </message>
    <message>
      <source>Sign with this bench's ke&amp;y, so that a change shows elsewhere</source>
      <translation>Mit dem Sch&amp;lüssel dieses Arbeitsplatzes signieren, damit eine Änderung anderswo auffällt</translation>
    </message>
    <message>
      <source>Signed</source>
      <translation>Abgezeichnet</translation>
    </message>
    <message>
      <source>signed</source>
      <translation>abgezeichnet</translation>
    </message>
    <message>
      <source>Signed by, for the owner or operator</source>
      <translation>Unterzeichnet von, für Eigentümer oder Betreiber</translation>
    </message>
    <message>
      <source>signed-twice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Signing records {title} of {number} by {who}.</source>
      <translation>Abzeichnen zeichnet {title} von {number} durch {who} auf.</translation>
    </message>
    <message>
      <source>sij,sjk,sik-&gt;si</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>silent</source>
      <translation>still</translation>
    </message>
    <message>
      <source>sister</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Sister unit</source>
      <translation>Schwesteranlage</translation>
    </message>
    <message>
      <source>Site</source>
      <translation>Standort</translation>
    </message>
    <message>
      <source>site</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Sites, equipment, people, instruments, cylinders, the shop</source>
      <translation>Standorte, Anlagen, Personen, Messgeräte, Flaschen, die Werkstatt</translation>
    </message>
    <message>
      <source>Size</source>
      <translation>Größe</translation>
    </message>
    <message>
      <source>slow or stopped</source>
      <translation>langsam oder steht</translation>
    </message>
    <message>
      <source>Slow outgassing would look the same as a leak so far.</source>
      <translation>Langsames Ausgasen sähe bisher genauso aus wie ein Leck.</translation>
    </message>
    <message>
      <source>Smallest leak it could see</source>
      <translation>Kleinstes Leck, das sie sehen könnte</translation>
    </message>
    <message>
      <source>smallest-leak</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>smallest-loss</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>snk,skn-&gt;sn</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>snl</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>So are {untold} more up to entry {gap} of bench {name}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>somebody else was chosen while a passphrase was asked for</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>somebody of the shop</source>
      <translation>jemand der Werkstatt</translation>
    </message>
    <message>
      <source>Something stands behind the end of the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Something went wrong that is a fault of this program, not yours. What was signed and what is typed is kept. The fault is written in {path}.</source>
      <translation>Etwas ist schiefgegangen, und es liegt an diesem Programm, nicht an Ihnen. Abgezeichnetes und Eingegebenes ist aufgehoben. Der Fehler steht in {path}.</translation>
    </message>
    <message>
      <source>Source</source>
      <translation>Quelle</translation>
    </message>
    <message>
      <source>source</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Source: {rule}.</source>
      <translation>Quelle: {rule}.</translation>
    </message>
    <message>
      <source>Sp&amp;eed</source>
      <translation>&amp;Geschwindigkeit</translation>
    </message>
    <message>
      <source>space: mark start     enter: end     del: clear     esc: back</source>
      <translation>Leertaste: Anfang     Enter: Ende     Entf: löschen     Esc: zurück</translation>
    </message>
    <message>
      <source>speaks {cell}</source>
      <translation>spricht {cell}</translation>
    </message>
    <message>
      <source>spec</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Specification</source>
      <translation>Bauvorschrift</translation>
    </message>
    <message>
      <source>Speed</source>
      <translation>Geschwindigkeit</translation>
    </message>
    <message>
      <source>split system</source>
      <translation>Split-System</translation>
    </message>
    <message>
      <source>stable</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Stand-alone retail food units, household refrigerators and freezers, self-contained room air conditioners and heat pumps, vending machines, self-contained ice machines, very low temperature equipment, water coolers; from 15 July 2024 food processing and dispensing equipment.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Stand-alone retail food units, household refrigerators and freezers, self-contained room air conditioners and heat pumps, vending machines.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Stand-alone retail food units, household refrigerators and freezers, vending machines.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Standard uncertainty</source>
      <translation>Standardunsicherheit</translation>
    </message>
    <message>
      <source>standing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Standing liquid takes condensing surface away.</source>
      <translation>Stehende Flüssigkeit nimmt Verflüssigungsfläche weg.</translation>
    </message>
    <message>
      <source>Standing liquid would raise it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Standing time</source>
      <translation>Standzeit</translation>
    </message>
    <message>
      <source>Stands</source>
      <translation>Stand</translation>
    </message>
    <message>
      <source>Stands at</source>
      <translation>Steht bei</translation>
    </message>
    <message>
      <source>Start</source>
      <translation>Beginn</translation>
    </message>
    <message>
      <source>start</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Start reading</source>
      <translation>Anzeige am Anfang</translation>
    </message>
    <message>
      <source>start {at}</source>
      <translation>Anfang {at}</translation>
    </message>
    <message>
      <source>starting up</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Statement of disposal</source>
      <translation>Entsorgungserklärung</translation>
    </message>
    <message>
      <source>Statement of the last hand-over</source>
      <translation>Erklärung zur letzten Übergabe</translation>
    </message>
    <message>
      <source>step</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>step not needed</source>
      <translation>Schritt nicht nötig</translation>
    </message>
    <message>
      <source>step signed</source>
      <translation>Schritt abgezeichnet</translation>
    </message>
    <message>
      <source>step-not-needed</source>
      <translation>Schritt nicht nötig</translation>
    </message>
    <message>
      <source>step-signed</source>
      <translation>Schritt abgezeichnet</translation>
    </message>
    <message>
      <source>Steps</source>
      <translation>Schritte</translation>
    </message>
    <message>
      <source>steps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>still</source>
      <translation>still</translation>
    </message>
    <message>
      <source>still to go</source>
      <translation>fehlt noch</translation>
    </message>
    <message>
      <source>still to go: slowly</source>
      <translation>fehlt noch: langsam</translation>
    </message>
    <message>
      <source>Stoc&amp;k-take</source>
      <translation>&amp;Inventur</translation>
    </message>
    <message>
      <source>Stock</source>
      <translation>Bestand</translation>
    </message>
    <message>
      <source>stock</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Stock-take</source>
      <translation>Inventur</translation>
    </message>
    <message>
      <source>stock-take</source>
      <translation>Inventur</translation>
    </message>
    <message>
      <source>Stock-take: {sentence}.</source>
      <translation>Inventur: {sentence}.</translation>
    </message>
    <message>
      <source>stocktake</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>stop</source>
      <translation>Stopp</translation>
    </message>
    <message>
      <source>Stop at {stop}.</source>
      <translation>Stopp bei {stop}.</translation>
    </message>
    <message>
      <source>Stop bits</source>
      <translation>Stoppbits</translation>
    </message>
    <message>
      <source>stop now</source>
      <translation>jetzt stoppen</translation>
    </message>
    <message>
      <source>stop reading</source>
      <translation>Stoppanzeige</translation>
    </message>
    <message>
      <source>Stop reading, {cylinder}</source>
      <translation>Stoppanzeige, {cylinder}</translation>
    </message>
    <message>
      <source>stop-reading</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Stop: {each}</source>
      <translation>Stopp: {each}</translation>
    </message>
    <message>
      <source>stub pinched, brazed shut</source>
      <translation>Stutzen abgequetscht, zugelötet</translation>
    </message>
    <message>
      <source>Subcooling</source>
      <translation>Unterkühlung</translation>
    </message>
    <message>
      <source>subcooling</source>
      <translation>Unterkühlung</translation>
    </message>
    <message>
      <source>subprocess.Popen[str]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>such as “5 min; 420 micron”</source>
      <translation>etwa „5 min; 420 micron“</translation>
    </message>
    <message>
      <source>Suction line and heat exchanger</source>
      <translation>Saugleitung und Wärmetauscher</translation>
    </message>
    <message>
      <source>Suction line temperature</source>
      <translation>Temperatur der Saugleitung</translation>
    </message>
    <message>
      <source>suction line temperature</source>
      <translation>Temperatur der Saugleitung</translation>
    </message>
    <message>
      <source>Suction pressure</source>
      <translation>Saugdruck</translation>
    </message>
    <message>
      <source>suction pressure</source>
      <translation>Saugdruck</translation>
    </message>
    <message>
      <source>Suction, liquid and hot-gas headers</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>suction-line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>suitable</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Suitable for flammable refrigerants</source>
      <translation>Geeignet für brennbare Kältemittel</translation>
    </message>
    <message>
      <source>Superheat</source>
      <translation>Überhitzung</translation>
    </message>
    <message>
      <source>superheat</source>
      <translation>Überhitzung</translation>
    </message>
    <message>
      <source>Supplier</source>
      <translation>Lieferant</translation>
    </message>
    <message>
      <source>supplier</source>
      <translation>Lieferant</translation>
    </message>
    <message>
      <source>support</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Switches, transducers and their tubes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>System pressure</source>
      <translation>Systemdruck</translation>
    </message>
    <message>
      <source>Ta&amp;ke back…</source>
      <translation>&amp;Zurücknehmen…</translation>
    </message>
    <message>
      <source>tables</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Take back</source>
      <translation>Zurücknehmen</translation>
    </message>
    <message>
      <source>take back an entry of their own</source>
      <translation>einen eigenen Eintrag zurücknehmen</translation>
    </message>
    <message>
      <source>take back what somebody else signed</source>
      <translation>zurücknehmen, was jemand anderes abgezeichnet hat</translation>
    </message>
    <message>
      <source>Take in files</source>
      <translation>Dateien übernehmen</translation>
    </message>
    <message>
      <source>take in what was recorded elsewhere</source>
      <translation>übernehmen, was anderswo aufgezeichnet wurde</translation>
    </message>
    <message>
      <source>Take reading</source>
      <translation>Anzeige übernehmen</translation>
    </message>
    <message>
      <source>taken</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>taken back</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Taken back; the entry stays on record.</source>
      <translation>Zurückgenommen; der Eintrag bleibt aufgezeichnet.</translation>
    </message>
    <message>
      <source>taken in</source>
      <translation>übernommen</translation>
    </message>
    <message>
      <source>Taken in of {chain_words}.</source>
      <translation>Übernommen: {chain_words}.</translation>
    </message>
    <message>
      <source>Taken out for the season</source>
      <translation>Für die Saison entnommen</translation>
    </message>
    <message>
      <source>taken out of service</source>
      <translation>außer Betrieb genommen</translation>
    </message>
    <message>
      <source>Taken out of service: label with date and signature says it is empty of refrigerant.</source>
      <translation>Außer Betrieb genommen: ein Schild mit Datum und Unterschrift sagt, dass kein Kältemittel darin ist.</translation>
    </message>
    <message>
      <source>taken over from a bench</source>
      <translation>von einem Arbeitsplatz übernommen</translation>
    </message>
    <message>
      <source>taken-in</source>
      <translation>übernommen</translation>
    </message>
    <message>
      <source>takes entry {reverses_number} back: {why}</source>
      <translation>nimmt Eintrag {reverses_number} zurück: {why}</translation>
    </message>
    <message>
      <source>Taking in what the shop knows …</source>
      <translation>Übernehme, was die Werkstatt weiß …</translation>
    </message>
    <message>
      <source>Taking in …</source>
      <translation>Wird übernommen …</translation>
    </message>
    <message>
      <source>tallest bar {most}</source>
      <translation>höchster Balken {most}</translation>
    </message>
    <message>
      <source>tapped</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>tare</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Tare as weighed empty</source>
      <translation>Tara, leer gewogen</translation>
    </message>
    <message>
      <source>Tare stamped</source>
      <translation>Tara eingeschlagen</translation>
    </message>
    <message>
      <source>tare-loss</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>target</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>tcwgmrp</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>technician</source>
      <translation>Techniker</translation>
    </message>
    <message>
      <source>tells nothing of</source>
      <translation>sagt nichts über</translation>
    </message>
    <message>
      <source>Temperature</source>
      <translation>Temperatur</translation>
    </message>
    <message>
      <source>temperature</source>
      <translation>Temperatur</translation>
    </message>
    <message>
      <source>Temperature [{temperature}]</source>
      <translation>Temperatur [{temperature}]</translation>
    </message>
    <message>
      <source>Temperature at end</source>
      <translation>Temperatur am Ende</translation>
    </message>
    <message>
      <source>Temperature at start</source>
      <translation>Temperatur am Anfang</translation>
    </message>
    <message>
      <source>Temperature at the reading</source>
      <translation>Temperatur bei der Ablesung</translation>
    </message>
    <message>
      <source>temperature difference</source>
      <translation>Temperaturdifferenz</translation>
    </message>
    <message>
      <source>temperature drop across the drier</source>
      <translation>Temperaturabfall am Trockner</translation>
    </message>
    <message>
      <source>Temperature in</source>
      <translation>Temperatur in</translation>
    </message>
    <message>
      <source>temperature, {label}</source>
      <translation>Temperatur, {label}</translation>
    </message>
    <message>
      <source>template</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Test</source>
      <translation>Prüfung</translation>
    </message>
    <message>
      <source>Test pressure stays at or under the lowest design pressure on the nameplate of the side under test.</source>
      <translation>Der Prüfdruck bleibt bei oder unter dem niedrigsten Auslegungsdruck des Typenschilds der geprüften Seite.</translation>
    </message>
    <message>
      <source>Tested with dry nitrogen through a regulator and a relief valve; never with oxygen or compressed air.</source>
      <translation>Mit trockenem Stickstoff über Druckminderer und Sicherheitsventil geprüft; nie mit Sauerstoff oder Druckluft.</translation>
    </message>
    <message>
      <source>tests</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Tests of repaired leaks</source>
      <translation>Prüfungen reparierter Lecks</translation>
    </message>
    <message>
      <source>text</source>
      <translation>Text</translation>
    </message>
    <message>
      <source>Text of open steps is not signed and not checked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Text of the guide</source>
      <translation>Text der Anleitung</translation>
    </message>
    <message>
      <source>Text size (Ctrl+Plus, Ctrl+Minus)</source>
      <translation>Schriftgröße (Strg+Plus, Strg+Minus)</translation>
    </message>
    <message>
      <source>That is not the passphrase.{wait}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The &amp;same thing</source>
      <translation>&amp;Dasselbe</translation>
    </message>
    <message>
      <source>The backup {target} can not be written: {reason}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The balance of {key} says {mass_words} of {key_2}; its transfers give {mass_words_2}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The balances of {refrigerant} over all places sum to {mass_words}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The chain of bench {bench} does not end as the head of the file says.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The charge is drawn here against the nameplate, once the nameplate charge is typed.</source>
      <translation>Die Füllung wird hier gegen das Typenschild gezeichnet, sobald dessen Füllmenge eingegeben ist.</translation>
    </message>
    <message>
      <source>The charge, weighed to the gram against the nameplate.</source>
      <translation>Die Füllung, aufs Gramm gegen das Typenschild gewogen.</translation>
    </message>
    <message>
      <source>The circuit closed, labelled and left as it should be.</source>
      <translation>Der Kreislauf geschlossen, gekennzeichnet und hinterlassen, wie es sein soll.</translation>
    </message>
    <message>
      <source>The circuit is</source>
      <translation>Der Kreislauf ist</translation>
    </message>
    <message>
      <source>The clock shows a time before the start; check it.</source>
      <translation>Die Uhr zeigt eine Zeit vor dem Beginn; bitte prüfen.</translation>
    </message>
    <message>
      <source>The compressor is neither run nor tested for insulation under vacuum, and never serves as the vacuum pump: its terminals arc over.</source>
      <translation>Der Verdichter wird unter Vakuum weder betrieben noch auf Isolation geprüft und dient nie als Vakuumpumpe: an seinen Klemmen schlägt es über.</translation>
    </message>
    <message>
      <source>The copy holds {entries} entries.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The curves hold from {low} to {high}; {left_out} rows outside are left out.</source>
      <translation>Die Kurven gelten von {low} bis {high}; {left_out} Zeilen außerhalb sind weggelassen.</translation>
    </message>
    <message>
      <source>The cylinder stands steady and is never warmed by a flame, nor above 50 °C (122 °F).</source>
      <translation>Die Flasche steht fest und wird nie mit einer Flamme oder über 50 °C (122 °F) erwärmt.</translation>
    </message>
    <message>
      <source>The decay test is drawn here from the first reading on.</source>
      <translation>Die Vakuumstandprobe wird hier ab der ersten Ablesung gezeichnet.</translation>
    </message>
    <message>
      <source>The detector answered before and after the search.</source>
      <translation>Das Suchgerät sprach vor und nach der Suche an.</translation>
    </message>
    <message>
      <source>The detector failed its check {when} the search: search again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The detector was not checked {missing} the search.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the disk does not answer as it should. Check the disk and its cable</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the disk is full. Free some space and do it again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the disk of its server does not answer as it should. Tell its administrator</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the disk of its server is full. Free some space there and do it again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The end counts other entries than the head.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The end of each chain was compared with its kept head, with {count} heads kept at exports in this file and {count_2} kept elsewhere.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the end of the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The entry at place {at} can not be read: {why}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The entry nests deeper than 50 levels.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The equipment was made for this refrigerant; hydrocarbon is never put into equipment made for another.</source>
      <translation>Die Anlage wurde für dieses Kältemittel gebaut; Kohlenwasserstoff kommt nie in eine für anderes gebaute.</translation>
    </message>
    <message>
      <source>The evaporator gets too little liquid and the vapour is heated long after boiling.</source>
      <translation>Der Verdampfer bekommt zu wenig Flüssigkeit, und der Dampf wird lange nach dem Sieden erhitzt.</translation>
    </message>
    <message>
      <source>The file can not be read on: {strerror}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The file can not be read: {said} ({orig}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The file could not be read to its end, so little was checked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The file ends in the middle; it was cut short. {copy}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the file was held against what is known here</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The file's pages are damaged: {damage}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The folder {folder} for backups can not be made: {strerror}. Move the shop file to a folder you may write in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The guard {name}, which keeps records from being changed, is not there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The guards against changing records and the pages of the file were examined.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The head does not say which numbers of which chains follow.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the head of a chain file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The head of the file names no entries of bench {bench}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the hose given at the weigh-in</source>
      <translation>der beim Einwiegen angegebene Schlauch</translation>
    </message>
    <message>
      <source>The hose would hold more than left the cylinder.</source>
      <translation>Der Schlauch enthielte mehr, als die Flasche verließ.</translation>
    </message>
    <message>
      <source>The hose's content can not be worked out from these readings.</source>
      <translation>Der Schlauchinhalt lässt sich aus diesen Ablesungen nicht berechnen.</translation>
    </message>
    <message>
      <source>The job is closed; open it again with a reason to record here.</source>
      <translation>Der Auftrag ist abgeschlossen; mit einem Grund wieder öffnen, um hier aufzuzeichnen.</translation>
    </message>
    <message>
      <source>The login {login} already records as bench {already}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The login {user} is not let into the shop in {dbname}. The shop's owner lets it in with: chargebench join-shop --login {user}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the maker</source>
      <translation>der Hersteller</translation>
    </message>
    <message>
      <source>The maker's expected figures, calls and authorisations.</source>
      <translation>Erwartete Werte des Herstellers, Anrufe und Freigaben.</translation>
    </message>
    <message>
      <source>The mass lines of entry {number} are not numbered as written.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The nameplate says {read}, the register {registered}. Correct the one that is wrong.</source>
      <translation>Das Typenschild sagt {read}, das Verzeichnis {registered}. Das Falsche berichtigen.</translation>
    </message>
    <message>
      <source>The newest backup is still the same.</source>
      <translation>Die neueste Sicherung ist noch gleich.</translation>
    </message>
    <message>
      <source>the number {value:g}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The passphrase is set.</source>
      <translation>Das Kennwort ist gesetzt.</translation>
    </message>
    <message>
      <source>The person at work is trained for this refrigerant and holds the certificate the law asks for.</source>
      <translation>Wer arbeitet, ist für dieses Kältemittel geschult und hat das gesetzlich verlangte Zertifikat.</translation>
    </message>
    <message>
      <source>The photo of entry {number} is kept at the bench that attached it; its hash is on record here.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The picture {name}… was changed: its content has another hash.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The pressure falls: shut the pump off, let the temperature settle, and start again.</source>
      <translation>Der Druck fällt: die Pumpe absperren, die Temperatur zur Ruhe kommen lassen und neu beginnen.</translation>
    </message>
    <message>
      <source>The pressure goes on rising in a straight line.</source>
      <translation>Der Druck steigt geradlinig weiter.</translation>
    </message>
    <message>
      <source>The pressure test is drawn here from the first reading with a temperature on.</source>
      <translation>Die Druckprobe wird hier ab der ersten Ablesung mit Temperatur gezeichnet.</translation>
    </message>
    <message>
      <source>The property process could not be started ({reason}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The property process did not answer within {seconds:g} s; try again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The property process did not start within {seconds:g} s.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The property process ended twice without an answer; gas densities are not available.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The pump is valved off: the decay test starts at this moment.</source>
      <translation>Die Pumpe ist abgesperrt: die Vakuumstandprobe beginnt in diesem Moment.</translation>
    </message>
    <message>
      <source>The reading still moves: wait until it rests, then press again.</source>
      <translation>Die Anzeige bewegt sich noch: warten, bis sie ruht, dann noch einmal drücken.</translation>
    </message>
    <message>
      <source>The readings fit more than one cause so far.</source>
      <translation>Die Ablesungen passen bisher zu mehr als einer Ursache.</translation>
    </message>
    <message>
      <source>The readings scatter too much to tell: look at the gauge, its place and its hose.</source>
      <translation>Die Ablesungen streuen zu stark: Messgerät, seinen Ort und seinen Schlauch ansehen.</translation>
    </message>
    <message>
      <source>The regulator is closed off: the pressure test starts at this moment.</source>
      <translation>Der Druckminderer ist geschlossen: die Druckprobe beginnt in diesem Moment.</translation>
    </message>
    <message>
      <source>The required recovery is {outcome}. Go on recovering, or record the level reached.</source>
      <translation>Die geforderte Absaugung ist {outcome}. Weiter absaugen oder den erreichten Stand aufzeichnen.</translation>
    </message>
    <message>
      <source>The rise levels off as it does over water or wet oil.</source>
      <translation>Der Anstieg flacht ab wie über Wasser oder nassem Öl.</translation>
    </message>
    <message>
      <source>The room is not closed in and air moves through it: vapour displaces air, low down first.</source>
      <translation>Der Raum ist nicht abgeschlossen und Luft bewegt sich: Dampf verdrängt Luft, zuerst am Boden.</translation>
    </message>
    <message>
      <source>the same</source>
      <translation>dasselbe</translation>
    </message>
    <message>
      <source>The same as {refrigerant}, an order of magnitude</source>
      <translation>Dasselbe als {refrigerant}, eine Größenordnung</translation>
    </message>
    <message>
      <source>The scale against the ledger.</source>
      <translation>Die Waage gegen das Bestandsbuch.</translation>
    </message>
    <message>
      <source>The search does not count: {void}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the server counted {failures} pages with a wrong checksum</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The server of {address} forgets what it confirmed when the power fails (its setting fsync is off). Have its administrator turn fsync on.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The shop's rule file does not count: {refusal} {chosen} counts alone.</source>
      <translation>Die Regeldatei der Werkstatt zählt nicht: {refusal} {chosen} zählt allein.</translation>
    </message>
    <message>
      <source>The sorting time of entry {number} is not its own.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The text contains half of a character that no file can store; type it again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the text of {lost_typed} open steps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The total of {refrigerant} from {source} to {target} on {day} at bench {bench} is not what the entries of the day give.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The transfer names no refrigerant.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The vacuum pump's outlet is in moving air and away from anything that can ignite gas.</source>
      <translation>Der Auslass der Vakuumpumpe liegt in bewegter Luft und fern von allem, was Gas zünden kann.</translation>
    </message>
    <message>
      <source>The whole rise stays within what a tight, dry system shows.</source>
      <translation>Der ganze Anstieg bleibt in dem, was ein dichtes, trockenes System zeigt.</translation>
    </message>
    <message>
      <source>The {key} row {key_2} is not what the last entry about it says.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The {which} reading stands far off the others: read on, and strike it out if it was wrong.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Then in {cylinder}</source>
      <translation>Dann in {cylinder}</translation>
    </message>
    <message>
      <source>there</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There are readings already. Take their lines out of the form to start again.</source>
      <translation>Es gibt schon Ablesungen. Ihre Zeilen aus dem Formular nehmen, um neu zu beginnen.</translation>
    </message>
    <message>
      <source>There are readings already. Take their lines out of the form, then add a series.</source>
      <translation>Es gibt schon Ablesungen. Ihre Zeilen aus dem Formular nehmen, dann eine Reihe hinzufügen.</translation>
    </message>
    <message>
      <source>There is a bench {letter} already; {next_bench} is free.</source>
      <translation>Einen Arbeitsplatz {letter} gibt es schon; {next_bench} ist frei.</translation>
    </message>
    <message>
      <source>There is a chain of bench {bench} in this shop already, and two computers can not go on with one. Choose another name for the bench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is a shop in {address} already. Open it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is hardly any liquid left standing in the condenser.</source>
      <translation>Im Verflüssiger steht kaum noch Flüssigkeit.</translation>
    </message>
    <message>
      <source>There is no backup beside this file.</source>
      <translation>Neben dieser Datei liegt keine Sicherung.</translation>
    </message>
    <message>
      <source>There is no entry {entry_id} in this shop.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is no file {old} and no backup of it; check the path.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is no file {path}. Check the path, or make a new shop.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is no folder {parent}. Make it, or choose another.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is no picture to paste; copy one first.</source>
      <translation>Es gibt kein Bild zum Einfügen; zuerst eines kopieren.</translation>
    </message>
    <message>
      <source>There is no shop in the database {dbname} of {host}. Whoever is to own it makes one with: chargebench make-shop.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is no such entry to reverse.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is no such job in this shop.</source>
      <translation>Einen solchen Auftrag gibt es in dieser Werkstatt nicht.</translation>
    </message>
    <message>
      <source>There is no such job in this shop; open the job first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is no time span to reckon a loss over.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>thermometer</source>
      <translation>Thermometer</translation>
    </message>
    <message>
      <source>Thermometer uncertainty</source>
      <translation>Unsicherheit des Thermometers</translation>
    </message>
    <message>
      <source>This bench</source>
      <translation>Dieser Arbeitsplatz</translation>
    </message>
    <message>
      <source>This chain file is of another shop. Take in files of benches that were begun from this shop's own.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This chain file is of version {int}; this program reads up to version {version}. Take it in with a newer chargebench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>this computer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This computer becomes a further bench of a shop there is already: choose the chain file that was handed over there to begin one.</source>
      <translation>Dieser Rechner wird ein weiterer Arbeitsplatz einer bestehenden Werkstatt: die dort dafür übergebene Kettendatei wählen.</translation>
    </message>
    <message>
      <source>This conflict is not open any more.</source>
      <translation>Dieser Widerspruch ist nicht mehr offen.</translation>
    </message>
    <message>
      <source>This entry is of a newer format. Take the file in with a newer chargebench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This is less than the tare of {cylinder}; check cylinder and scale.</source>
      <translation>Das ist weniger als die Tara von {cylinder}; Flasche und Waage prüfen.</translation>
    </message>
    <message>
      <source>This job is already open under another entry.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>this login has no right to that. Ask the shop's owner</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This looks like seven data bits; try 7 bits with even or odd parity.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This loss</source>
      <translation>Dieser Verlust</translation>
    </message>
    <message>
      <source>This moment already has a reading; wait for the next one.</source>
      <translation>Für diesen Zeitpunkt gibt es schon eine Ablesung; auf die nächste warten.</translation>
    </message>
    <message>
      <source>this month</source>
      <translation>dieser Monat</translation>
    </message>
    <message>
      <source>This photo is kept at the bench that attached it.</source>
      <translation>Dieses Foto liegt an dem Arbeitsplatz, der es angehängt hat.</translation>
    </message>
    <message>
      <source>This program knows no step “{step}”. Take the file in with a newer chargebench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This refrigerant</source>
      <translation>Dieses Kältemittel</translation>
    </message>
    <message>
      <source>This scale can not decide. {finer}</source>
      <translation>Diese Waage kann nicht entscheiden. {finer}</translation>
    </message>
    <message>
      <source>This scale decides; one of up to {enough} resolution would, with all other doubt as it is.</source>
      <translation>Diese Waage entscheidet; eine mit bis zu {enough} Auflösung würde es auch, bei sonst gleicher Unsicherheit.</translation>
    </message>
    <message>
      <source>This shop can not be opened</source>
      <translation>Diese Werkstatt kann nicht geöffnet werden</translation>
    </message>
    <message>
      <source>This shop is open only to be read; nothing is recorded from here.</source>
      <translation>Diese Werkstatt ist nur zum Lesen offen; von hier wird nichts aufgezeichnet.</translation>
    </message>
    <message>
      <source>this year</source>
      <translation>dieses Jahr</translation>
    </message>
    <message>
      <source>thread</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Threshold</source>
      <translation>Schwellenwert</translation>
    </message>
    <message>
      <source>threshold</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>thresholds</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ticked</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ticked by {person}, {at}</source>
      <translation>abgehakt von {person}, {at}</translation>
    </message>
    <message>
      <source>ticks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>tight</source>
      <translation>dicht</translation>
    </message>
    <message>
      <source>time</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>time span</source>
      <translation>Zeitspanne</translation>
    </message>
    <message>
      <source>Time still needed for it</source>
      <translation>Dafür noch nötige Zeit</translation>
    </message>
    <message>
      <source>Time, parts</source>
      <translation>Zeit, Teile</translation>
    </message>
    <message>
      <source>time-needed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>time-still-needed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Times broken with nitrogen</source>
      <translation>Mit Stickstoff gebrochen, Anzahl</translation>
    </message>
    <message>
      <source>title</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>To begin a further bench, {letter}</source>
      <translation>Zum Beginn einer weiteren Werkbank, {letter}</translation>
    </message>
    <message>
      <source>To compare with; else equipment of the same make and model.</source>
      <translation>Zum Vergleich; sonst eine Anlage gleicher Marke und gleichen Modells.</translation>
    </message>
    <message>
      <source>today</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Today's is {how}; the band is {within}.</source>
      <translation>Heute ist es {how}; das Band ist {within}.</translation>
    </message>
    <message>
      <source>Today's is {how}; the maker gave no tolerance.</source>
      <translation>Heute ist es {how}; der Hersteller gab keine Toleranz an.</translation>
    </message>
    <message>
      <source>Tolerance</source>
      <translation>Toleranz</translation>
    </message>
    <message>
      <source>tolerance</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Tolerance, either side</source>
      <translation>Toleranz je Seite</translation>
    </message>
    <message>
      <source>tonne|tonnes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too little air leaves liquid unboiled, so the superheat falls.</source>
      <translation>Zu wenig Luft lässt Flüssigkeit ungesotten, die Überhitzung fällt.</translation>
    </message>
    <message>
      <source>Too little air or ice on the coil leaves liquid unboiled.</source>
      <translation>Zu wenig Luft oder Eis am Verdampfer lässt Flüssigkeit ungesotten.</translation>
    </message>
    <message>
      <source>Too little air would let frost grow over the whole coil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too little air would make it colder.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too little charge gives the condenser less heat to shed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too little refrigerant to cool the coil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too many wrong tries. Try again in 1 second.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too many wrong tries. Try again in {left} s.</source>
      <translation>Zu viele falsche Versuche. In {left} s noch einmal versuchen.</translation>
    </message>
    <message>
      <source>Too many wrong tries. Try again in {seconds} seconds.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too much charge does not leave a coil dry.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too much charge feeds the evaporator rather more.</source>
      <translation>Zu viel Füllung versorgt den Verdampfer eher reichlicher.</translation>
    </message>
    <message>
      <source>Too much charge frosts evenly too.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too much charge raises the boiling temperature.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too much charge spills over into the suction line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too much charge would fill the coil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too much charge would stand as more subcooling.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too small for it: {figures}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>topped-up-sealed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Torr</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>torr</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Totals</source>
      <translation>Summen</translation>
    </message>
    <message>
      <source>Totals by refrigerant</source>
      <translation>Summen nach Kältemittel</translation>
    </message>
    <message>
      <source>Totals of the period</source>
      <translation>Summen des Zeitraums</translation>
    </message>
    <message>
      <source>toxic, </source>
      <translation>giftig, </translation>
    </message>
    <message>
      <source>Toxicity or oxygen limit</source>
      <translation>Giftigkeits- oder Sauerstoffgrenze</translation>
    </message>
    <message>
      <source>Trace gas</source>
      <translation>Prüfgas</translation>
    </message>
    <message>
      <source>trace gas</source>
      <translation>Prüfgas</translation>
    </message>
    <message>
      <source>trace-gas</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Transfer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>transfer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>translations</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Travel</source>
      <translation>Fahrt</translation>
    </message>
    <message>
      <source>travel</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>true</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>true or false</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>truncate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>trusted_schema=OFF</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Try again now.</source>
      <translation>Jetzt noch einmal versuchen.</translation>
    </message>
    <message>
      <source>twice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Two columns (*.txt *.csv *.tsv *.log);;All files (*)</source>
      <translation>Zwei Spalten (*.txt *.csv *.tsv *.log);;Alle Dateien (*)</translation>
    </message>
    <message>
      <source>Two columns from the clipboard: time and reading, with units.</source>
      <translation>Zwei Spalten aus der Zwischenablage: Zeit und Anzeige, mit Einheiten.</translation>
    </message>
    <message>
      <source>two columns, time and reading</source>
      <translation>zwei Spalten, Zeit und Ablesung</translation>
    </message>
    <message>
      <source>two or three columns</source>
      <translation>zwei oder drei Spalten</translation>
    </message>
    <message>
      <source>Type</source>
      <translation>Bauart</translation>
    </message>
    <message>
      <source>type the reading</source>
      <translation>Anzeige eingeben</translation>
    </message>
    <message>
      <source>type the scale's reading</source>
      <translation>Anzeige der Waage eingeben</translation>
    </message>
    <message>
      <source>Type what the scale shows.</source>
      <translation>Eingeben, was die Waage zeigt.</translation>
    </message>
    <message>
      <source>typed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>typed {live_text}{unit}</source>
      <translation>eingegeben {live_text}{unit}</translation>
    </message>
    <message>
      <source>ultrasonic</source>
      <translation>Ultraschall</translation>
    </message>
    <message>
      <source>Unaccounted</source>
      <translation>Ungeklärt</translation>
    </message>
    <message>
      <source>unaccounted-mass</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>uncertainty</source>
      <translation>Unsicherheit</translation>
    </message>
    <message>
      <source>Uncertainty of a thermometer</source>
      <translation>Unsicherheit eines Thermometers</translation>
    </message>
    <message>
      <source>Under</source>
      <translation>Nach</translation>
    </message>
    <message>
      <source>under</source>
      <translation>darunter</translation>
    </message>
    <message>
      <source>under box air</source>
      <translation>unter Kühlraumluft</translation>
    </message>
    <message>
      <source>Under nameplate by {size}: {charged} of {nameplate}. Weigh in the rest.</source>
      <translation>Unter Typenschild um {size}: {charged} von {nameplate}. Den Rest einwiegen.</translation>
    </message>
    <message>
      <source>Under nameplate by {text} {doubt}</source>
      <translation>Unter Typenschild um {text} {doubt}</translation>
    </message>
    <message>
      <source>under the caps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>under the insulation</source>
      <translation>unter der Dämmung</translation>
    </message>
    <message>
      <source>under vacuum air leaks in, by at most the air's pressure, past dried or frozen spots; a rise is never turned into grams a year</source>
      <translation>unter Vakuum dringt Luft ein, höchstens mit dem Luftdruck, vorbei an eingetrockneten oder gefrorenen Stellen; ein Anstieg wird nie in Gramm im Jahr umgerechnet</translation>
    </message>
    <message>
      <source>under-nameplate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Understood {count} readings ({source}):</source>
      <translation>{count} Ablesungen verstanden ({source}):</translation>
    </message>
    <message>
      <source>union joints</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>unit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>units</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Units shown</source>
      <translation>Gezeigte Einheiten</translation>
    </message>
    <message>
      <source>Universal, Type I, A1</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>unknown</source>
      <translation>unbekannt</translation>
    </message>
    <message>
      <source>Unt&amp;il</source>
      <translation>&amp;Bis</translation>
    </message>
    <message>
      <source>Unterminated string</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Until</source>
      <translation>Bis</translation>
    </message>
    <message>
      <source>until</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Until it does, this bench can go on in a file of its own and hand over its entries later.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Until, last day</source>
      <translation>Bis, letzter Tag</translation>
    </message>
    <message>
      <source>unverified</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>up to {until}</source>
      <translation>bis {until}</translation>
    </message>
    <message>
      <source>update</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>US or ?</source>
      <translation>US oder ?</translation>
    </message>
    <message>
      <source>Usa&amp;ge</source>
      <translation>&amp;Verbrauch</translation>
    </message>
    <message>
      <source>Usage</source>
      <translation>Verbrauch</translation>
    </message>
    <message>
      <source>Usage by month</source>
      <translation>Verbrauch nach Monaten</translation>
    </message>
    <message>
      <source>Usage log</source>
      <translation>Verbrauchsliste</translation>
    </message>
    <message>
      <source>usage log</source>
      <translation>Verbrauchsliste</translation>
    </message>
    <message>
      <source>user</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>usual</source>
      <translation>üblich</translation>
    </message>
    <message>
      <source>usual {band}</source>
      <translation>üblich {band}</translation>
    </message>
    <message>
      <source>Vacuum</source>
      <translation>Vakuum</translation>
    </message>
    <message>
      <source>vacuum</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Vacuum and decay test</source>
      <translation>Evakuieren und Vakuumstandprobe</translation>
    </message>
    <message>
      <source>Vacuum gauge</source>
      <translation>Vakuummeter</translation>
    </message>
    <message>
      <source>vacuum gauge</source>
      <translation>Vakuummeter</translation>
    </message>
    <message>
      <source>vacuum not deep enough</source>
      <translation>Vakuum nicht tief genug</translation>
    </message>
    <message>
      <source>Vacuum pump</source>
      <translation>Vakuumpumpe</translation>
    </message>
    <message>
      <source>vacuum pump</source>
      <translation>Vakuumpumpe</translation>
    </message>
    <message>
      <source>vacuum-not-deep</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Valid until</source>
      <translation>Gültig bis</translation>
    </message>
    <message>
      <source>value</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>values</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>valve fault</source>
      <translation>Ventilfehler</translation>
    </message>
    <message>
      <source>Valve thread</source>
      <translation>Ventilgewinde</translation>
    </message>
    <message>
      <source>vapour</source>
      <translation>Dampf</translation>
    </message>
    <message>
      <source>Vapour [{density}]</source>
      <translation>Dampf [{density}]</translation>
    </message>
    <message>
      <source>vapour at suction pressure</source>
      <translation>Dampf bei Saugdruck</translation>
    </message>
    <message>
      <source>vapour density</source>
      <translation>Dampfdichte</translation>
    </message>
    <message>
      <source>Vapour drawn from a zeotrope has another composition than the liquid: take it as liquid and let it expand before the suction side.</source>
      <translation>Dampf aus einem Zeotrop hat eine andere Zusammensetzung als die Flüssigkeit: flüssig entnehmen und vor der Saugseite entspannen lassen.</translation>
    </message>
    <message>
      <source>ventilated</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ventilation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>verdict</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Verif&amp;y again</source>
      <translation>Noch einmal &amp;prüfen</translation>
    </message>
    <message>
      <source>verified</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Verified tight</source>
      <translation>Dicht bestätigt</translation>
    </message>
    <message>
      <source>very high</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>virgin</source>
      <translation>neu</translation>
    </message>
    <message>
      <source>volume</source>
      <translation>Volumen</translation>
    </message>
    <message>
      <source>walk-in or remote condensing</source>
      <translation>Kühlzelle oder entfernte Verflüssigung</translation>
    </message>
    <message>
      <source>wall passages, rubbing, nails</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Warning labels and red marks are in place and can be read; replaced where they are not.</source>
      <translation>Warnschilder und rote Markierungen sind angebracht und lesbar; sonst ersetzt.</translation>
    </message>
    <message>
      <source>was due for requalification on {due}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Watch on before charging.</source>
      <translation>Vor dem Füllen weiter beobachten.</translation>
    </message>
    <message>
      <source>Watch on for</source>
      <translation>Weiter beobachten</translation>
    </message>
    <message>
      <source>Watched for</source>
      <translation>Beobachtet</translation>
    </message>
    <message>
      <source>water</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Water boils at the coldest part below</source>
      <translation>Wasser siedet an der kältesten Stelle unter</translation>
    </message>
    <message>
      <source>Water capacity</source>
      <translation>Wasserkapazität</translation>
    </message>
    <message>
      <source>Weigh</source>
      <translation>Wiegen</translation>
    </message>
    <message>
      <source>weigh</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Weigh every cylinder in one go</source>
      <translation>Alle Flaschen in einem Zug wiegen</translation>
    </message>
    <message>
      <source>Weigh-in</source>
      <translation>Einwiegen</translation>
    </message>
    <message>
      <source>weigh-in</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>weighed</source>
      <translation>gewogen</translation>
    </message>
    <message>
      <source>Weighings</source>
      <translation>Wägungen</translation>
    </message>
    <message>
      <source>weight</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What</source>
      <translation>Was</translation>
    </message>
    <message>
      <source>what</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What a chain can not prove:</source>
      <translation>Was eine Kette nicht beweisen kann:</translation>
    </message>
    <message>
      <source>What a cylinder is and how far it may be filled.</source>
      <translation>Was eine Flasche ist und wie weit sie gefüllt werden darf.</translation>
    </message>
    <message>
      <source>What comes now</source>
      <translation>Was gerade kommt</translation>
    </message>
    <message>
      <source>What fits in {register}</source>
      <translation>Was passt in {register}</translation>
    </message>
    <message>
      <source>What is known</source>
      <translation>Was bekannt ist</translation>
    </message>
    <message>
      <source>What is printed on; left empty, as this computer's country has it.</source>
      <translation>Worauf gedruckt wird; leer: wie im Land dieses Rechners üblich.</translation>
    </message>
    <message>
      <source>What is to be looked at again, when, and how it turned out.</source>
      <translation>Was noch einmal anzusehen ist, wann, und wie es ausging.</translation>
    </message>
    <message>
      <source>What is too much stands as liquid in the condenser.</source>
      <translation>Was zu viel ist, steht als Flüssigkeit im Verflüssiger.</translation>
    </message>
    <message>
      <source>What is typed is worked out here.</source>
      <translation>Was eingegeben wird, wird hier berechnet.</translation>
    </message>
    <message>
      <source>What speaks for which fault</source>
      <translation>Was für welchen Fehler spricht</translation>
    </message>
    <message>
      <source>What the nameplate says, as read on the equipment today.</source>
      <translation>Was das Typenschild sagt, heute an der Anlage abgelesen.</translation>
    </message>
    <message>
      <source>What the photo shows</source>
      <translation>Was das Foto zeigt</translation>
    </message>
    <message>
      <source>What the search can see is not known.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What the visit took.</source>
      <translation>Was der Besuch brauchte.</translation>
    </message>
    <message>
      <source>What to look at</source>
      <translation>Was anzusehen ist</translation>
    </message>
    <message>
      <source>What unlocks the signature of {name}</source>
      <translation>Was die Unterschrift von {name} entsperrt</translation>
    </message>
    <message>
      <source>What was found, why it happened, and what was set differently.</source>
      <translation>Was gefunden wurde, warum es geschah, was anders eingestellt wurde.</translation>
    </message>
    <message>
      <source>What was in the equipment before was not weighed, so the mass alone can not tell whether the charge is right.</source>
      <translation>Was vorher in der Anlage war, wurde nicht gewogen; die Masse allein sagt also nicht, ob die Füllung stimmt.</translation>
    </message>
    <message>
      <source>What was taken out, into which cylinder, down to which level.</source>
      <translation>Was entnommen wurde, in welche Flasche, bis zu welchem Stand.</translation>
    </message>
    <message>
      <source>What, by how much, what to do</source>
      <translation>Was, um wie viel, was zu tun ist</translation>
    </message>
    <message>
      <source>When</source>
      <translation>Wann</translation>
    </message>
    <message>
      <source>when</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>When it was done, if not now: 2026-11-25 14:30</source>
      <translation>Wann es getan wurde, wenn nicht jetzt: 2026-11-25 14:30</translation>
    </message>
    <message>
      <source>Where</source>
      <translation>Wo</translation>
    </message>
    <message>
      <source>where</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Where equipment stands and who answers for it.</source>
      <translation>Wo Anlagen stehen und wer für sie einsteht.</translation>
    </message>
    <message>
      <source>Where it is taken out of service: what was done, and who takes the equipment.</source>
      <translation>Wo sie außer Betrieb genommen wird: was getan wurde und wer die Anlage nimmt.</translation>
    </message>
    <message>
      <source>where it meets the coil</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Where the work is done</source>
      <translation>Wo gearbeitet wird</translation>
    </message>
    <message>
      <source>Where was searched, with what, and what was found.</source>
      <translation>Wo gesucht wurde, womit, und was gefunden wurde.</translation>
    </message>
    <message>
      <source>Whether entry {entry} is reversed is not what the entries say.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Whether the entry at place {position} ({kind}) names {place} is not what it says.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Whether this was recorded in {place} is not known yet; do it again when the server answers: it is asked first, and nothing is recorded twice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Which jobs</source>
      <translation>Welche Aufträge</translation>
    </message>
    <message>
      <source>who</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Who keeps these records, in which units, under which rules.</source>
      <translation>Wer diese Aufzeichnungen führt, in welchen Einheiten, unter welchen Regeln.</translation>
    </message>
    <message>
      <source>Who signs</source>
      <translation>Wer abzeichnet</translation>
    </message>
    <message>
      <source>Who signs, and by which certificate.</source>
      <translation>Wer abzeichnet und mit welchem Zertifikat.</translation>
    </message>
    <message>
      <source>Whoever rewrites the file with all its hashes and kept heads, or cuts off its end and every head kept in it, leaves a chain that agrees with itself. Only a head kept elsewhere, as in the manifest of an export, shows that.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Why</source>
      <translation>Warum</translation>
    </message>
    <message>
      <source>why</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Why (may stay empty)</source>
      <translation>Warum (darf leer bleiben)</translation>
    </message>
    <message>
      <source>Why is entry {entry_number} taken back? It stays in the records, and a further entry reverses it.</source>
      <translation>Warum wird Eintrag {entry_number} zurückgenommen? Er bleibt in den Aufzeichnungen, ein weiterer Eintrag storniert ihn.</translation>
    </message>
    <message>
      <source>Why is entry {step_number} taken back? It stays in the records, and a further entry reverses it; the text opens again to be mended.</source>
      <translation>Warum wird Eintrag {step_number} zurückgenommen? Er bleibt in den Aufzeichnungen, ein weiterer Eintrag storniert ihn; der Text öffnet sich wieder zum Berichtigen.</translation>
    </message>
    <message>
      <source>Why is this job opened again?</source>
      <translation>Warum wird dieser Auftrag wieder geöffnet?</translation>
    </message>
    <message>
      <source>Why is {step} not needed?</source>
      <translation>Warum ist {step} nicht nötig?</translation>
    </message>
    <message>
      <source>Why release is lawful</source>
      <translation>Warum das Ablassen zulässig ist</translation>
    </message>
    <message>
      <source>Why the method was changed</source>
      <translation>Warum die Methode geändert wurde</translation>
    </message>
    <message>
      <source>Why the photo is taken back</source>
      <translation>Warum das Foto zurückgenommen wird</translation>
    </message>
    <message>
      <source>Why, then Return</source>
      <translation>Warum, dann Enter</translation>
    </message>
    <message>
      <source>Will be written, for {words}{narrowed}: {workbook} (every job, entry, transfer and test with its totals), {tables} (the same as CSV and SQLite), {checklist} (the flammable-refrigerant handling lists), {reports} and {jobs} (a report and a job file for each job), {calendar} (what is due, for a calendar), and a manifest with the SHA-256 of each and the head of the chain.</source>
      <translation>Geschrieben wird, für {words}{narrowed}: {workbook} (jeder Auftrag, Eintrag, Übertrag und Test mit Summen), {tables} (dasselbe als CSV und SQLite), {checklist} (die Prüflisten für brennbare Kältemittel), {reports} und {jobs} (ein Bericht und eine Auftragsdatei je Auftrag), {calendar} (was fällig ist, für einen Kalender) und ein Verzeichnis mit dem SHA-256 von jedem und dem Kopf der Kette.</translation>
    </message>
    <message>
      <source>Will be written: every entry known here, as it was signed, with its hash. The other bench takes the file in under Records; what it has already is passed over.</source>
      <translation>Geschrieben wird: jeder hier bekannte Eintrag, wie er abgezeichnet wurde, mit seinem Hash. Der andere Arbeitsplatz übernimmt die Datei unter Aufzeichnungen; was er schon hat, wird übergangen.</translation>
    </message>
    <message>
      <source>wind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>windy</source>
      <translation>windig</translation>
    </message>
    <message>
      <source>With a capillary tube too much charge overfeeds.</source>
      <translation>Mit Kapillarrohr überflutet zu viel Füllung.</translation>
    </message>
    <message>
      <source>With little air the coil falls far below it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>With too little air the superheat would fall.</source>
      <translation>Mit zu wenig Luft fiele die Überhitzung.</translation>
    </message>
    <message>
      <source>With whom</source>
      <translation>Mit wem</translation>
    </message>
    <message>
      <source>within</source>
      <translation>innerhalb</translation>
    </message>
    <message>
      <source>within the half-width given</source>
      <translation>innerhalb der angegebenen halben Breite</translation>
    </message>
    <message>
      <source>Within ±{text} of the nameplate {doubt}</source>
      <translation>Innerhalb ±{text} des Typenschilds {doubt}</translation>
    </message>
    <message>
      <source>Without a key it locks after</source>
      <translation>Ohne Tastendruck sperrt sie nach</translation>
    </message>
    <message>
      <source>Without air it does not boil in the coil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Without air the condenser acts as a dirty one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Without pressure nothing comes out.</source>
      <translation>Ohne Druck kommt nichts heraus.</translation>
    </message>
    <message>
      <source>Without the fan there is too little air.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>word</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>words</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>work</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Work done on it</source>
      <translation>Daran getane Arbeit</translation>
    </message>
    <message>
      <source>workbook</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>worked</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Worked out</source>
      <translation>Berechnet</translation>
    </message>
    <message>
      <source>Worked out by the ideal gas law; its error is in the doubt.</source>
      <translation>Nach dem idealen Gasgesetz berechnet; sein Fehler steckt in der Unsicherheit.</translation>
    </message>
    <message>
      <source>Worked out from entries {map}.</source>
      <translation>Berechnet aus den Einträgen {map}.</translation>
    </message>
    <message>
      <source>Working out …</source>
      <translation>Wird berechnet …</translation>
    </message>
    <message>
      <source>workshop</source>
      <translation>Werkstattraum</translation>
    </message>
    <message>
      <source>would have seen it</source>
      <translation>hätte es gesehen</translation>
    </message>
    <message>
      <source>Written into {folder}: {names}; {count} files.</source>
      <translation>Geschrieben in {folder}: {names}; {count} Dateien.</translation>
    </message>
    <message>
      <source>Written: {path}, {words}.</source>
      <translation>Geschrieben: {path}, {words}.</translation>
    </message>
    <message>
      <source>wrong-refrigerant</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>year</source>
      <translation>Jahr</translation>
    </message>
    <message>
      <source>yes</source>
      <translation>ja</translation>
    </message>
    <message>
      <source>yes or no</source>
      <translation>ja oder nein</translation>
    </message>
    <message>
      <source>Your certificate number</source>
      <translation>Ihre Zertifikatsnummer</translation>
    </message>
    <message>
      <source>Your login may not do that there. Have the server's administrator run: {statement};</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Your name</source>
      <translation>Ihr Name</translation>
    </message>
    <message>
      <source>Your shop</source>
      <translation>Ihre Werkstatt</translation>
    </message>
    <message>
      <source>zeotrope</source>
      <translation>zeotrop</translation>
    </message>
    <message>
      <source>zeroed display</source>
      <translation>auf null gestellte Anzeige</translation>
    </message>
    <message>
      <source>{address} can not be read as an address; one such as postgresql://login@server/database was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{at}: Expected text in UTF-8; this byte is not. Save the file again as UTF-8.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{at}: Nested more than {deepest} levels deep; no job file needs that.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{begin} to {end}</source>
      <translation>{begin} bis {end}</translation>
    </message>
    <message>
      <source>{best} would tell {first} from {second}{more}.</source>
      <translation>{best} würde {first} von {second} unterscheiden{more}.</translation>
    </message>
    <message>
      <source>{called} {one} and {other} have the same {what} {number}. Open this flag and say whether they are one thing; both are then shown as one.</source>
      <translation>{called} {one} und {other} haben dieselbe Angabe {what} {number}. Diese Meldung öffnen und sagen, ob es ein Ding ist; beide werden dann als eines gezeigt.</translation>
    </message>
    <message>
      <source>{called} {row} has serial number {serial} here and {other_serial} at bench {bench}: perhaps two things under one id. Read the plate. If they are two, register one under another id and book what it holds over to it; then {settle}.</source>
      <translation>{called} {row} hat hier die Seriennummer {serial} und an Arbeitsplatz {bench} {other_serial}: vielleicht zwei Dinge unter einer Kennung. Das Schild lesen. Sind es zwei, eines unter anderer Kennung eintragen und seinen Inhalt umbuchen; dann {settle}.</translation>
    </message>
    <message>
      <source>{capitalize}: {name}, by {on}.</source>
      <translation>{capitalize}: {name}, bis {on}.</translation>
    </message>
    <message>
      <source>{co2e_t:.1f} t CO2 equivalent.</source>
      <translation>{co2e_t:.1f} t CO2-Äquivalent.</translation>
    </message>
    <message>
      <source>{copy} could not be restored: {strerror}. The present file is kept as {path} or beside it under a name with “aside”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{copy} is damaged ({damage}). Choose another backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{copy} was made by a newer chargebench. Install the newer program.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{count} balances were summed anew from the mass lines; over all places every refrigerant must sum to zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{count} entries recorded.</source>
      <translation>{count} Einträge aufgezeichnet.</translation>
    </message>
    <message>
      <source>{count} mass lines belong to place {at}, where no entry stands.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{count} more (F8)</source>
      <translation>{count} weitere (F8)</translation>
    </message>
    <message>
      <source>{count} of {listed} lines of the safety list for {words} are open at {title}. First: {line}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{count} read from {source}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{count} readings</source>
      <translation>{count} Ablesungen</translation>
    </message>
    <message>
      <source>{count} readings, last {pascals} after {minutes:g} min, {corrected} less what temperature explains.</source>
      <translation>{count} Ablesungen, zuletzt {pascals} nach {minutes:g} min, {corrected} ohne das, was die Temperatur erklärt.</translation>
    </message>
    <message>
      <source>{count} register rows, {count_2} jobs and {count_3} reversals were rebuilt from the entries and compared.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{currenttext} signs from now on{asks}.</source>
      <translation>{currenttext} zeichnet ab jetzt ab{asks}.</translation>
    </message>
    <message>
      <source>{cylinder_id} is non-refillable; recover into a refillable recovery cylinder.</source>
      <translation>{cylinder_id} ist nicht wiederbefüllbar; in eine wiederbefüllbare Absaugflasche absaugen.</translation>
    </message>
    <message>
      <source>{cylinder_id} would hold {after}, over its limit of {limit} ({by}) by {over}; use another cylinder, or give the reason to fill it above the limit.</source>
      <translation>{cylinder_id} enthielte {after}, um {over} über ihrer Grenze von {limit} ({by}); eine andere Flasche nehmen oder den Grund nennen, sie darüber zu füllen.</translation>
    </message>
    <message>
      <source>{cylinder} holds {found}; the ledger has {expected}.</source>
      <translation>{cylinder} enthält {found}; das Bestandsbuch hat {expected}.</translation>
    </message>
    <message>
      <source>{cylinder} is registered for {registered} and holds {held}. Do not use it; return it as a mixture.</source>
      <translation>{cylinder} ist für {registered} eingetragen und enthält {held}. Nicht verwenden; als Gemisch zurückgeben.</translation>
    </message>
    <message>
      <source>{cylinder} lost {share:.1f} % of its stamped tare. Requalify it before it is filled.</source>
      <translation>{cylinder} hat {share:.1f} % der eingeschlagenen Tara verloren. Vor dem Füllen wiederkehrend prüfen lassen.</translation>
    </message>
    <message>
      <source>{cylinder} stands at {mass} of {refrigerant} by the book. Put it on the scale and book the difference.</source>
      <translation>{cylinder} steht im Bestandsbuch bei {mass} {refrigerant}. Auf die Waage stellen und die Differenz buchen.</translation>
    </message>
    <message>
      <source>{cylinder} weighs {size} {more} than the ledger says. Why? The reason books the difference; without one it stays as it is, to be found out.</source>
      <translation>{cylinder} wiegt {size} {more}, als das Bestandsbuch sagt. Warum? Mit dem Grund wird die Differenz gebucht; ohne bleibt es, wie es ist, bis zur Klärung.</translation>
    </message>
    <message>
      <source>{cylinder} weighs {size} {where} than the book says, beyond ±{tolerance}. Find out why, then book the difference.</source>
      <translation>{cylinder} wiegt {size} {where}, als das Bestandsbuch sagt, mehr als ±{tolerance}. Den Grund finden, dann die Differenz buchen.</translation>
    </message>
    <message>
      <source>{cylinder} {when} ({word}). Do not fill it; what is in it may be used.</source>
      <translation>{cylinder} {when} ({word}). Nicht füllen; der Inhalt darf verwendet werden.</translation>
    </message>
    <message>
      <source>{cylinder}: {difference} {more} than the ledger says, {booked}.</source>
      <translation>{cylinder}: {difference} {more}, als das Bestandsbuch sagt, {booked}.</translation>
    </message>
    <message>
      <source>{days} days</source>
      <translation>{days} Tagen</translation>
    </message>
    <message>
      <source>{days} months</source>
      <translation>{days} Monaten</translation>
    </message>
    <message>
      <source>{days} totals of days and {places} mentions of places were counted anew.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{days} years</source>
      <translation>{days} Jahren</translation>
    </message>
    <message>
      <source>{done} of {count} ticked; Space ticks</source>
      <translation>{done} von {count} abgehakt; Leertaste hakt ab</translation>
    </message>
    <message>
      <source>{done} of {listed}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{done} of {listed} places were searched. Not searched: {names}.</source>
      <translation>{done} von {listed} Stellen wurden abgesucht. Nicht abgesucht: {names}.</translation>
    </message>
    <message>
      <source>{entries} entries were read ({chains}): numbers without a gap, each hash recomputed from what is stored and from the hash before it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{entries} entries were read{taken} and are in {path}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{entry} belongs to job {job}, which was closed meanwhile. It is recorded, but was not in sight when the job was closed. {look}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{entry} signs the step “{step}” of job {job}, which another bench has signed too. Both moved what they say they moved; take one back if it was done once, then {settle}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{entry} takes back what another bench had taken back already, so its masses were turned round twice. Weigh what it moved, book the difference, then {settle}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{expected}; this one can not be read.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{expected}; this one names no database.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{figure} from {start}.</source>
      <translation>{figure} ab {start}.</translation>
    </message>
    <message>
      <source>{file} can not be read: {trouble}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{file} has {size:.1f} MB; expected a text file of two columns, at most {bytes_most:g} MB.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{first}: expected the shop and its people in the first file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{found} where the nameplate says {expected}. Do not charge; recover it as a mixture into a mixed-waste cylinder.</source>
      <translation>{found}, wo das Typenschild {expected} sagt. Nicht füllen; als Gemisch in eine Flasche für gemischte Abfälle absaugen.</translation>
    </message>
    <message>
      <source>{holds} Going back leaves out {said}; the present file is kept aside with them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{holds} The present file can not be read, so what it holds beyond that can not be told; it is kept aside.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{holds} The present file holds nothing beyond that.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{instrument}: port</source>
      <translation>{instrument}: Anschluss</translation>
    </message>
    <message>
      <source>{key} “{words}” here, “{there}” there</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{kilopascal} kPa ({psi} psi)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{kind} test tight</source>
      <translation>Prüfung ({kind}) dicht</translation>
    </message>
    <message>
      <source>{known}. A vacuum test can not prove tightness of a few grams a year.</source>
      <translation>{known}. Eine Vakuumprobe kann Dichtheit bis auf wenige Gramm im Jahr nicht beweisen.</translation>
    </message>
    <message>
      <source>{label}, line {number}</source>
      <translation>{label}, Zeile {number}</translation>
    </message>
    <message>
      <source>{leak:.2g} mbar L/s</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{leak}; go on for {minutes} more minutes.</source>
      <translation>{leak}; noch {minutes} Minuten weiter.</translation>
    </message>
    <message>
      <source>{least} to {most}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{limit} to fill</source>
      <translation>{limit} füllbar</translation>
    </message>
    <message>
      <source>{lines} mass lines were compared with the hashed content of their entries.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{lines} readings, by the certificate</source>
      <translation>{lines} Ablesungen, nach dem Zertifikat</translation>
    </message>
    <message>
      <source>{lines} readings, each within half a step</source>
      <translation>{lines} Ablesungen, jede auf einen halben Schritt</translation>
    </message>
    <message>
      <source>{lost} entries, the last recorded {last}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{low} to {high} {label}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{make_says} Records are kept in {path}.</source>
      <translation>{make_says} Aufzeichnungen liegen in {path}.</translation>
    </message>
    <message>
      <source>{mass_mg!r} mg is not a mass that can be moved; whole milligrams from zero to a thousand tonnes were expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{mass} to use</source>
      <translation>{mass} nutzbar</translation>
    </message>
    <message>
      <source>{mass} too much</source>
      <translation>{mass} zu viel</translation>
    </message>
    <message>
      <source>{measure} {share:.0f} % of rated, {state}</source>
      <translation>{measure} {share:.0f} % des Nennwerts, {state}</translation>
    </message>
    <message>
      <source>{mg} on {on}</source>
      <translation>{mg} am {on}</translation>
    </message>
    <message>
      <source>{minutes:.0f} more minutes would help to decide</source>
      <translation>{minutes:.0f} weitere Minuten würden zur Entscheidung helfen</translation>
    </message>
    <message>
      <source>{minutes} min</source>
      <translation>{minutes} min</translation>
    </message>
    <message>
      <source>{minutes} min {rest} s</source>
      <translation>{minutes} min {rest} s</translation>
    </message>
    <message>
      <source>{missing} short of the nameplate: it had leaked, was never charged right, or is still in oil and hoses.</source>
      <translation>{missing} fehlen zum Typenschild: entwichen, nie richtig gefüllt oder noch in Öl und Schläuchen.</translation>
    </message>
    <message>
      <source>{name} can not be read ({why}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{name} is larger than any photo; a picture of at most {most} MB was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{name} is not text; expected two columns, {example}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{name} is over its threshold by the {over} method. The method may change only while every appliance of the site is below by both.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{name} is {mine} and may not {act}. Expected {who}.</source>
      <translation>{name} ist {mine} und darf nicht: {act}. Erwartet wurde {who}.</translation>
    </message>
    <message>
      <source>{name} leaks {rate} a year, over the threshold of {threshold}. Next, by {by}: {owed}.</source>
      <translation>{name} verliert {rate} im Jahr, über dem Schwellenwert von {threshold}. Als Nächstes, bis {by}: {owed}.</translation>
    </message>
    <message>
      <source>{name} leaks {rate} a year, over the threshold of {threshold}. Overdue since {by}: {owed}.</source>
      <translation>{name} verliert {rate} im Jahr, über dem Schwellenwert von {threshold}. Überfällig seit {by}: {owed}.</translation>
    </message>
    <message>
      <source>{name} must have a leak detection system from {reaching} on, and none is on record. Fit one, or enter it in the register.</source>
      <translation>{name} muss ab {reaching} ein Leckerkennungssystem haben, und keines ist aufgezeichnet. Eines einbauen oder ins Verzeichnis eintragen.</translation>
    </message>
    <message>
      <source>{name} saturation is known here from {low} to {high}; got {given}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{name} signs</source>
      <translation>{name} zeichnet ab</translation>
    </message>
    <message>
      <source>{name} signs without a passphrase. Ctrl+Shift+L sets one.</source>
      <translation>{name} zeichnet ohne Kennwort ab. Strg+Umschalt+L setzt eines.</translation>
    </message>
    <message>
      <source>{name} {line} temperature is known here from {low} to {high}, absolute; got {given}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{name}: {owed} was due on {by}.</source>
      <translation>{name}: {owed} war fällig am {by}.</translation>
    </message>
    <message>
      <source>{number} further entries of bench {bench}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{number} {title}, from {name}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{one} beside {other}:</source>
      <translation>{one} neben {other}:</translation>
    </message>
    <message>
      <source>{other} beside this file is a copy of this shop in which work went on by itself (bench {parted}). Nothing recorded there since is here. Keep it, look it through, and record here what is missing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{other} beside this file is a later copy of this shop, with {more}. Before anything is recorded here, go back to that file as to a backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{out} can not be written: {reason}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{out} is there already; name a file that is not.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} can not be read ({strerror}). Check the path and your rights to it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} can not be written: {strerror}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} holds {here} entries, its backup {newest} holds {entries}: an older copy was put in its place. Restore that backup; or bring what is in both into a new file: chargebench rescue --shop OLD --out NEW</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} is kept on a server; a file is not put in its place. Whoever looks after the server restores its own backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} is not a shop file. Choose the file this program made, or a backup of it from the folder {name}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} is open in another window. Close it there, then restore again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} is there already. Choose another name.</source>
      <translation>{path} gibt es schon. Einen anderen Namen wählen.</translation>
    </message>
    <message>
      <source>{path} is there already. Open it, or choose another name.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} was copied while it was open, without {path_2}-wal, which belongs beside it and may hold what was recorded last. Put that file beside it; or restore the newest backup; or go on with what is here and in the backups, in a new file: chargebench rescue --shop OLD --out NEW</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} was taken in before; nothing was recorded again.</source>
      <translation>{path} wurde schon übernommen; nichts wurde noch einmal aufgezeichnet.</translation>
    </message>
    <message>
      <source>{path}, line {line}, {dotted}: {why}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path}: can not be read as a text file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path}: not a TOML file: {error}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{per_minute:.3g} {unit}/min</source>
      <translation>{per_minute:.3g} {unit}/min</translation>
    </message>
    <message>
      <source>{pictures} pictures were compared with the hashes they are kept under.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} can not be used: {said}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} can not be used: {said}. {meanwhile}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} does not end as it was left: entry {number} of bench {bench} was the last, now it is {found} or its content differs. Verify the file, then restore a backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} has all its guards; there is nothing to mend.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} is damaged: a text in it can not be read.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} is damaged: it does not say whose it is. Restore the newest backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} is damaged: it has no {missing}. Restore the newest backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} is damaged: it names no bench. Restore the newest backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} is kept on a server, and so are its backups: whoever looks after the server makes and restores them. What an export writes here is kept beside them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} lost what keeps its records from being changed ({missing}): another tool was at it. Verify the file to see what was changed, then mend its guards, which is recorded, or restore a backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} stood at {mass_words} of {refrigerant}; the entries that were read give {mass_words_2}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} was made by a newer chargebench (schema {version}, this one knows {count}). Install the newer program, or open a backup from before the upgrade.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} was made by an older chargebench. Its owner, after a backup of the server, brings it up for every bench with: chargebench upgrade-shop.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} was made by an older chargebench. Open it once in the window; a copy is kept before it is upgraded.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{port} can not be listened to ({why}); trying again until it is back.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{reason} The reading at {at:g} min fits none of this and was left out.</source>
      <translation>{reason} Die Ablesung bei {at:g} min passt zu nichts davon und wurde weggelassen.</translation>
    </message>
    <message>
      <source>{refrigerant} has no liquid at {temperature}; expected a filling ratio in the rule set. Fill by the ratio stamped on the cylinder.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{refrigerant} into {name}</source>
      <translation>{refrigerant} in {name}</translation>
    </message>
    <message>
      <source>{refrigerant} went into cylinder {thing} at bench {bench}, and another refrigerant at another bench. Do not use it until it is known what is in it. {look}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{refrigerant}: from {first:.4g} at {first_2:g} {label} to {last:.4g} {label_2} at {last_2:g} {label}.</source>
      <translation>{refrigerant}: von {first:.4g} bei {first_2:g} {label} bis {last:.4g} {label_2} bei {last_2:g} {label}.</translation>
    </message>
    <message>
      <source>{refrigerant}: saturation</source>
      <translation>{refrigerant}: Sättigung</translation>
    </message>
    <message>
      <source>{register} {row} was changed here and at bench {bench} ({differ}). The words {stands} stand, for they are the later ones. {look}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{row_id} is in the register already; choose another id.</source>
      <translation>{row_id} steht schon im Verzeichnis; eine andere Kennung wählen.</translation>
    </message>
    <message>
      <source>{row_id} saved.</source>
      <translation>{row_id} gespeichert.</translation>
    </message>
    <message>
      <source>{rule_set}. Jurisdiction: {jurisdiction}. Edition {edition}, in effect from {effective}. Of its {count} figures {unverified} are not checked at their source; they are marked so wherever they decide.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{rule}: {word}, end at most</source>
      <translation>{rule}: {word}, Ende höchstens</translation>
    </message>
    <message>
      <source>{rule}: {word}, rise to at most</source>
      <translation>{rule}: {word}, Anstieg höchstens bis</translation>
    </message>
    <message>
      <source>{rule}: {word}, start at most</source>
      <translation>{rule}: {word}, Anfang höchstens</translation>
    </message>
    <message>
      <source>{said}, stop in {minutes}:{rest:02d}</source>
      <translation>{said}, Stopp in {minutes}:{rest:02d}</translation>
    </message>
    <message>
      <source>{says} (The figure behind it is {marks_said}.)</source>
      <translation>{says} (Die Zahl dahinter ist {marks_said}.)</translation>
    </message>
    <message>
      <source>{sentence} Reckoned for {which}, filled with saturated vapour at {at}; with liquid in it {liquid}, {share:.1f} % of the charge.</source>
      <translation>{sentence} Gerechnet für {which}, gefüllt mit gesättigtem Dampf bei {at}; mit Flüssigkeit darin {liquid}, {share:.1f} % der Füllung.</translation>
    </message>
    <message>
      <source>{share} % short, if it goes on</source>
      <translation>{share} % zu wenig, wenn es so weitergeht</translation>
    </message>
    <message>
      <source>{shop} is as it was in {copy}.{kept}</source>
      <translation>{shop} ist wieder wie in {copy}.{kept}</translation>
    </message>
    <message>
      <source>{since} to {until}</source>
      <translation>{since} bis {until}</translation>
    </message>
    <message>
      <source>{size:.1f} MB</source>
      <translation>{size:.1f} MB</translation>
    </message>
    <message>
      <source>{sources}, by mass from the components</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{source} holds a mixture; it can only be returned.</source>
      <translation>{source} enthält ein Gemisch; es kann nur zurückgegeben werden.</translation>
    </message>
    <message>
      <source>{source} was not made to begin a bench. At the shop, hand over for a new bench: that gives it a letter of its own.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{source}, limits of the verdict</source>
      <translation>{source}, Grenzen des Urteils</translation>
    </message>
    <message>
      <source>{source}, practical limit</source>
      <translation>{source}, praktischer Grenzwert</translation>
    </message>
    <message>
      <source>{step} signed, entry {number}.</source>
      <translation>{step} abgezeichnet, Eintrag {number}.</translation>
    </message>
    <message>
      <source>{text} could be {whole} or {decimal}; write it without a comma.</source>
      <translation>{text} kann {whole} oder {decimal} sein; ohne Komma schreiben.</translation>
    </message>
    <message>
      <source>{text} is outside what {kind} here can be ({lowest:g} to {highest:g} {base}); check the unit and decimal mark.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{text} may be a vacuum or an absolute pressure; write -{value:g} inHg or {value:g} inHg vac for a vacuum, {value:g} inHg(a) for absolute.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{title} is recorded already.</source>
      <translation>{title} ist schon aufgezeichnet.</translation>
    </message>
    <message>
      <source>{title} is signed already (entry {number}); reverse it with a reason to record it again.</source>
      <translation>{title} ist schon abgezeichnet (Eintrag {number}); mit einem Grund stornieren, um neu aufzuzeichnen.</translation>
    </message>
    <message>
      <source>{title} recorded as not needed.</source>
      <translation>{title} als nicht nötig aufgezeichnet.</translation>
    </message>
    <message>
      <source>{title}: one or two?</source>
      <translation>{title}: eines oder zwei?</translation>
    </message>
    <message>
      <source>{title}: {about}, entry {entry_number}.</source>
      <translation>{title}: {about}, Eintrag {entry_number}.</translation>
    </message>
    <message>
      <source>{total} in it is over the charge limit of {limit} ({title}). Recover down to the nameplate.</source>
      <translation>{total} darin liegen über der Füllgrenze von {limit} ({title}). Bis auf das Typenschild absaugen.</translation>
    </message>
    <message>
      <source>{unverified} of {leaks} leaks found are not verified tight. Test them before refrigerant goes back in.</source>
      <translation>{unverified} von {leaks} gefundenen Lecks sind nicht als dicht bestätigt. Prüfen, bevor wieder Kältemittel hineinkommt.</translation>
    </message>
    <message>
      <source>{value} is too large a number for an entry.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{what} by {how} on {done_on}</source>
      <translation>{what} durch {how} am {done_on}</translation>
    </message>
    <message>
      <source>{what} by {on}</source>
      <translation>{what} bis {on}</translation>
    </message>
    <message>
      <source>{what}, reversed</source>
      <translation>{what}, storniert</translation>
    </message>
    <message>
      <source>{when}: nothing disagrees.</source>
      <translation>{when}: nichts widerspricht sich.</translation>
    </message>
    <message>
      <source>{when}: {count} disagree. Keep this file as it is and a backup.</source>
      <translation>{when}: {count} Widersprüche. Diese Datei so lassen, wie sie ist, und eine Sicherung behalten.</translation>
    </message>
    <message>
      <source>{where}, live</source>
      <translation>{where}, live</translation>
    </message>
    <message>
      <source>{word} by {by}, {when}, entry {step_number}.{judged}</source>
      <translation>{word} von {by}, {when}, Eintrag {step_number}.{judged}</translation>
    </message>
    <message>
      <source>“{base}” is not one of {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{base}” is not the rule set chosen, {over}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{bench}” can not name a bench; a capital letter and up to seven more capitals or digits were expected, for example B. Job numbers begin with it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{first}” may be minutes and seconds or hours and minutes; write 0:05:30, or a unit, as in 5.5 min.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{key}” is used twice.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{letter}” can not name a bench; a capital letter and up to seven more capitals or digits were expected, for example {next_bench}.</source>
      <translation>„{letter}“ kann keinen Arbeitsplatz benennen; erwartet wurden ein Großbuchstabe und bis zu sieben weitere Großbuchstaben oder Ziffern, etwa {next_bench}.</translation>
    </message>
    <message>
      <source>“{mark}” is not one of {marks}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{name}” is not a table of {base}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{name}” is not one of {classes}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{number}” may be {whole} or {decimal}; say in the settings that the comma is the decimal mark.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{person}” is not in the register of people; choose somebody who is.</source>
      <translation>„{person}“ steht nicht im Verzeichnis der Personen; jemanden wählen, der darin steht.</translation>
    </message>
    <message>
      <source>“{place}” is not a place: a cylinder, an equipment, or one of {fixed_places} was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{safety_class}” is not one of {classes}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{shown}” is not a refrigerant known here; did you mean {near}?</source>
      <translation>„{shown}“ ist hier kein bekanntes Kältemittel; gemeint {near}?</translation>
    </message>
    <message>
      <source>“{shown}” is not a refrigerant known here; expected a designation such as R290.</source>
      <translation>„{shown}“ ist hier kein bekanntes Kältemittel; erwartet wurde eine Bezeichnung wie R290.</translation>
    </message>
    <message>
      <source>“{source}” is not a source in the bibliography.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{step}” is not one of {steps}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{step}” stands a second time; say in “again” why it was repeated.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{step}” was not done before in this job.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{text}” is below a perfect vacuum where the air has {air_pressure}; check the sign and the unit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{twice}” stands twice.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{typed}” may be gauge or absolute; write {gauge} as read on a gauge, or {absolute}.</source>
      <translation>„{typed}“ kann Überdruck oder absolut sein; {gauge} schreiben wie am Messgerät abgelesen, oder {absolute}.</translation>
    </message>
    <message>
      <source>“{unit}” is not a unit known here.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{unit}” is not a unit of {dimension}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{value}” is not a day of the year such as 03-01.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{value}” is not one of {allowed}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{when}” is not one of {known}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>‹ &amp;Records</source>
      <translation>‹ &amp;Aufzeichnungen</translation>
    </message>
    <message>
      <source>‹ Jobs</source>
      <translation>‹ Aufträge</translation>
    </message>
    <message>
      <source>‹ Stock</source>
      <translation>‹ Bestand</translation>
    </message>
    <message>
      <source>▲ nameplate</source>
      <translation>▲ Typenschild</translation>
    </message>
    <message>
      <source>▲ stop here</source>
      <translation>▲ hier stoppen</translation>
    </message>
    <message>
      <source>◆ off today's by more than {sure}, or {surfaces} where taken from surfaces: our own band; off the maker's by more than the maker's own tolerance where there is one. Other pressures and single temperatures follow weather and load and are not marked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>○  less what temperature explains     ×  as read
band  what temperature and gauge leave in doubt (k = 2)</source>
      <translation>○  ohne das, was die Temperatur erklärt     ×  wie abgelesen
Band  was Temperatur und Messgerät offen lassen (k = 2)</translation>
    </message>
  </context>
</TS>
