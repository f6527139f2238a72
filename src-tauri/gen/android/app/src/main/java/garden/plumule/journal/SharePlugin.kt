package garden.plumule.journal

import android.app.Activity
import android.app.PendingIntent
import android.content.BroadcastReceiver
import android.content.ClipData
import android.content.Context
import android.content.Intent
import android.webkit.MimeTypeMap
import androidx.activity.result.ActivityResult
import androidx.core.content.FileProvider
import app.tauri.annotation.ActivityCallback
import app.tauri.annotation.Command
import app.tauri.annotation.TauriPlugin
import app.tauri.plugin.Invoke
import app.tauri.plugin.JSObject
import app.tauri.plugin.Plugin
import java.io.File

/** Whether an app was chosen in the sheet that was opened last. */
private var taken = false

/** What src-tauri/src/files/share.rs calls. */
@TauriPlugin
class SharePlugin(private val activity: Activity) : Plugin(activity) {
  @Command
  fun share(invoke: Invoke) {
    val file = File(invoke.getArgs().getString("path"))
    val lent = FileProvider.getUriForFile(activity, activity.packageName + ".fileprovider", file)
    val kind = MimeTypeMap.getSingleton().getMimeTypeFromExtension(file.extension)
    val send = Intent(Intent.ACTION_SEND)
      .setType(kind ?: "application/octet-stream")
      .putExtra(Intent.EXTRA_STREAM, lent)
      .addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION)
    send.clipData = ClipData.newRawUri(file.name, lent)
    val told = PendingIntent.getBroadcast(
      activity, 0, Intent(activity, ShareTaken::class.java),
      PendingIntent.FLAG_UPDATE_CURRENT or PendingIntent.FLAG_IMMUTABLE
    )
    taken = false
    startActivityForResult(invoke, Intent.createChooser(send, null, told.intentSender), "closed")
  }

  /** The sheet itself never says whether it was called off. */
  @ActivityCallback
  private fun closed(invoke: Invoke, result: ActivityResult) {
    val answer = JSObject()
    answer.put("taken", taken)
    invoke.resolve(answer)
  }
}

/** An app was chosen in the sheet. */
class ShareTaken : BroadcastReceiver() {
  override fun onReceive(context: Context, intent: Intent) {
    taken = true
  }
}
