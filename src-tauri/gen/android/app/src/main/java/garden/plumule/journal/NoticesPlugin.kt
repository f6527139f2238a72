package garden.plumule.journal

import android.Manifest
import android.app.Activity
import android.app.ActivityManager
import android.content.Intent
import android.os.Build
import android.webkit.WebView
import androidx.core.app.NotificationManagerCompat
import app.tauri.PermissionState
import app.tauri.annotation.Command
import app.tauri.annotation.Permission
import app.tauri.annotation.PermissionCallback
import app.tauri.annotation.TauriPlugin
import app.tauri.plugin.Invoke
import app.tauri.plugin.JSObject
import app.tauri.plugin.Plugin

private const val PERMISSION = "notices"

/** What src-tauri/src/notify/android.rs calls. */
@TauriPlugin(permissions = [Permission(strings = [Manifest.permission.POST_NOTIFICATIONS], alias = PERMISSION)])
class NoticesPlugin(private val activity: Activity) : Plugin(activity) {
  private val notices = Notices(activity.applicationContext)

  /** What was pressed before Rust listened: it may be what started the app. */
  private var waiting: JSObject? = null
  private var heard = false

  override fun load(webView: WebView) {
    super.load(webView)
    take(activity.intent)
  }

  override fun onNewIntent(intent: Intent) {
    super.onNewIntent(intent)
    take(intent)
  }

  @Command
  fun set(invoke: Invoke) {
    notices.set(invoke.getArgs())
    invoke.resolve()
  }

  @Command
  fun cancel(invoke: Invoke) {
    val ids = invoke.getArgs().getJSONArray("ids")
    for (index in 0 until ids.length()) notices.cancel(ids.getInt(index))
    invoke.resolve()
  }

  @Command
  fun standing(invoke: Invoke) {
    invoke.resolve(standing())
  }

  @Command
  fun ask(invoke: Invoke) {
    if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.TIRAMISU && !allowed()) {
      requestPermissionForAlias(PERMISSION, invoke, "asked")
    } else {
      invoke.resolve(standing())
    }
  }

  @PermissionCallback
  private fun asked(invoke: Invoke) {
    invoke.resolve(standing())
  }

  /** From now on Rust listens; what was pressed before is in the answer. */
  @Command
  fun listening(invoke: Invoke) {
    heard = true
    val answer = waiting ?: JSObject()
    waiting = null
    invoke.resolve(answer)
  }

  private fun take(intent: Intent?) {
    val fromHistory = (intent?.flags ?: 0) and Intent.FLAG_ACTIVITY_LAUNCHED_FROM_HISTORY != 0
    if (intent == null || fromHistory || !intent.hasExtra(NOTICE)) return
    val tap = JSObject()
    tap.put("id", intent.getIntExtra(NOTICE, 0))
    tap.put("answer", intent.getStringExtra(ANSWER) ?: OPENED)
    tap.put("tray", intent.getStringExtra(TRAY) ?: "")
    // The activity may be made anew with the same intent.
    intent.removeExtra(NOTICE)
    if (heard) trigger("pressed", tap) else waiting = tap
  }

  private fun allowed() = NotificationManagerCompat.from(activity).areNotificationsEnabled()

  private fun standing(): JSObject {
    val canAsk = Build.VERSION.SDK_INT >= Build.VERSION_CODES.TIRAMISU &&
      getPermissionState(PERMISSION).let { it == PermissionState.PROMPT || it == PermissionState.PROMPT_WITH_RATIONALE }
    val heldBack = Build.VERSION.SDK_INT >= Build.VERSION_CODES.P &&
      activity.getSystemService(ActivityManager::class.java).isBackgroundRestricted
    val answer = JSObject()
    answer.put("permission", if (allowed()) "granted" else if (canAsk) "ask" else "refused")
    answer.put("heldBack", heldBack)
    return answer
  }
}
