# The demo journal's places and notes

demo-propagator = Anzuchtkasten
demo-sill = Küchenfenster
demo-shed = Schuppen
demo-greenhouse = Gewächshaus
demo-frame = Frühbeet
demo-card = Pappstreifen zwischen die drei gesteckt, um sie nicht zu verwechseln.
demo-room = Am Fenster war kein Platz mehr, also kamen diese in den Schuppen.
demo-let-it-be = Jemand hat schon wieder nachgegossen. Bitte in Ruhe lassen.
demo-roots = Zwei haben Wurzeln bis an den Topfrand.
