# Photos: taking them in, looking at them, naming them later.

error-photo-empty = That file is empty. Take the photo again, or choose another.
error-photo-too-large = That file is over { $megabytes } MB. Choose a smaller photo, or take it again at a smaller size.
error-photo-not-a-picture = That file is not a photo. Choose a JPEG, PNG or WebP picture.
error-photo-other-format = Photos of that kind can’t be read here. Set the camera to save JPEG, or choose a JPEG, PNG or WebP picture.
error-photo-truncated = That photo is cut short: part of the file is missing. Copy it again, or take it again.
error-photo-animated = That picture moves. Choose one that stands still.
error-photo-too-many-pixels = That photo is larger than { $megapixels } megapixels. Take it again at a smaller size, or choose another.
error-photo-damaged = That photo is damaged and can’t be read. Take it again, or choose another.

photo-take = Take a photo
photo-choose = Choose a photo
photo-taking = Taking the photo in …
photo-again = Try with another photo
photo-strip = Photos of { $name }
photo-add-of = Photograph { $name }
photo-none = No photos yet.
photo-open = Photo of { $at }
photo-at = { $at }
photo-camera = By the camera’s clock: { $taken }
photo-hand = By { $hand }
photo-missing = The file of this photo is not on this device.
photo-missing-what = Its place in the journal is kept. The file may still be on another device, or in an archive of the journal.
photo-larger = Larger
photo-smaller = Smaller
photo-whole = Whole photo
photo-next = Next photo
photo-before = Photo before
photo-delete = Delete
photo-zoom = Size { $percent } %
photo-view = The photo; drag or use the arrow keys to move it

photo-unnamed = { $photos ->
    [one] A photo to name
   *[other] { $photos } photos to name
}
photo-unnamed-what = Taken at the bench, and not yet said of what.
photo-later = Photograph now, name later
photo-later-what = Take the photo while your hands are in the compost. It waits here and on the Trays screen until you say what it is of.
photo-name = Name it
photo-name-this = Name it: the photo of { $at }
photo-name-title = What is it of?
photo-name-what = Tray, plants, packet or place
photo-name-find = Find by code or name
photo-name-none = Nothing by that name. Try the code on the label, the plant or the place.
photo-name-tray = Tray
photo-name-plants = Plants
photo-name-packet = Packet
photo-name-place = Place
