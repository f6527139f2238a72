package garden.plumule.journal

import android.os.Bundle
import android.os.Environment
import android.view.View
import androidx.activity.enableEdgeToEdge
import androidx.core.view.ViewCompat
import androidx.core.view.WindowInsetsCompat

/** A camera's picture is read within minutes; what is older was left behind. */
private const val PICTURE_LEFT_MS = 60 * 60 * 1000L

class MainActivity : TauriActivity() {
  override fun onCreate(savedInstanceState: Bundle?) {
    enableEdgeToEdge()
    super.onCreate(savedInstanceState)
    keepClearOfBarsAndKeyboard(findViewById(android.R.id.content))
    dropPicturesLeftBehind()
  }

  /** Older web views know no safe areas, and none shrinks for the keyboard once the app is drawn to the edge. */
  private fun keepClearOfBarsAndKeyboard(content: View) {
    ViewCompat.setOnApplyWindowInsetsListener(content) { view, insets ->
      val taken = insets.getInsets(
        WindowInsetsCompat.Type.systemBars()
          or WindowInsetsCompat.Type.displayCutout()
          or WindowInsetsCompat.Type.ime()
      )
      view.setPadding(taken.left, taken.top, taken.right, taken.bottom)
      WindowInsetsCompat.CONSUMED
    }
  }

  /** The web view has the camera write at full size into this folder and never clears it. */
  private fun dropPicturesLeftBehind() {
    val folder = getExternalFilesDir(Environment.DIRECTORY_PICTURES) ?: return
    val before = System.currentTimeMillis() - PICTURE_LEFT_MS
    folder.listFiles { file -> file.name.startsWith("JPEG_") && file.lastModified() < before }
      ?.forEach { it.delete() }
  }
}
